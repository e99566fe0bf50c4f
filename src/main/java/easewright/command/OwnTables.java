package easewright.command;

import easewright.ease.EaseTableProblem;
import easewright.ease.EaseTables;
import easewright.ease.TableFile;
import java.nio.file.Path;

/** The ease tables that the user gives with {@code --table}, each a file as docs/ease-tables.md describes it. */
final class OwnTables {
    private OwnTables() {}

    /** The tables given and, after them, the user's own. */
    static EaseTables with(EaseTables given, Given command) throws Trouble {
        EaseTables all = given;
        for (Path file : command.paths("--table")) {
            try {
                all = all.with(TableFile.read(file, file.toString()));
            } catch (EaseTableProblem e) {
                throw new Trouble(e.code(), e.values());
            }
        }
        return all;
    }
}
