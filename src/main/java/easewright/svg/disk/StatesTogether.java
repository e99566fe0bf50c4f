package easewright.svg.disk;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/**
 * Several states of one file in little room. From one state to the next a few elements of a drawing differ: each state is
 * cut behind its tags, a cutting that occurs in several is stored once, and a state is the list of its cuttings.
 */
final class StatesTogether {
    private StatesTogether() {}

    static byte[] packed(List<byte[]> states) {
        Map<ByteBuffer, Integer> numbers = new LinkedHashMap<>();
        List<List<Integer>> lists = new ArrayList<>();
        for (byte[] state : states) {
            List<Integer> list = new ArrayList<>();
            for (ByteBuffer cutting : cuttings(state)) {
                list.add(numbers.computeIfAbsent(cutting, c -> numbers.size()));
            }
            lists.add(list);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DataOutputStream data = new DataOutputStream(new BufferedOutputStream(new DeflaterOutputStream(out)))) {
            data.writeInt(numbers.size());
            for (ByteBuffer cutting : numbers.keySet()) {
                data.writeInt(cutting.remaining());
                data.write(cutting.array(), cutting.arrayOffset() + cutting.position(), cutting.remaining());
            }
            data.writeInt(lists.size());
            for (List<Integer> list : lists) {
                data.writeInt(list.size());
                for (int number : list) {
                    data.writeInt(number);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Memory cannot fail to be written", e);
        }
        return out.toByteArray();
    }

    private static List<ByteBuffer> cuttings(byte[] state) {
        List<ByteBuffer> cuttings = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < state.length; i++) {
            if (state[i] == '>' || i == state.length - 1) {
                cuttings.add(ByteBuffer.wrap(state, from, i + 1 - from));
                from = i + 1;
            }
        }
        return cuttings;
    }

    /**
     * @throws IOException if these are not packed states
     */
    static List<byte[]> unpacked(byte[] packed) throws IOException {
        try (DataInputStream in = new DataInputStream(
                new BufferedInputStream(new InflaterInputStream(new ByteArrayInputStream(packed))))) {
            List<byte[]> cuttings = new ArrayList<>();
            for (int left = in.readInt(); left > 0; left--) {
                cuttings.add(in.readNBytes(in.readInt()));
            }
            List<byte[]> states = new ArrayList<>();
            for (int left = in.readInt(); left > 0; left--) {
                ByteArrayOutputStream state = new ByteArrayOutputStream();
                for (int parts = in.readInt(); parts > 0; parts--) {
                    state.writeBytes(cuttings.get(in.readInt()));
                }
                states.add(state.toByteArray());
            }
            return states;
        }
    }
}
