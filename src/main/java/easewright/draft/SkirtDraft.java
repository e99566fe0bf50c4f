package easewright.draft;

import easewright.geom.Curve;
import easewright.geom.Line;
import easewright.geom.Point;
import easewright.pattern.Body;
import easewright.pattern.Cloth;
import easewright.pattern.EdgeRef;
import easewright.pattern.EdgeRole;
import easewright.pattern.Level;
import easewright.pattern.LevelKind;
import easewright.pattern.LevelMark;
import easewright.pattern.Mate;
import easewright.pattern.Pattern;
import easewright.pattern.Scale;
import java.util.List;
import java.util.Map;

/**
 * A straight skirt: front on the fold, back with a centre seam, waistband.
 *
 * <p>Rules, with their standing. H: wikieducator.org, "Handout for drafting skirt block" (read). P:
 * project-patterns.co.uk, "How to draft a skirt block", 2018 (read as far as the back darts). Half the hip girth plus
 * half the ease is the width of half the skirt (H, P); the back takes 0.75 cm more than the front half (H 5–6); the
 * side is raised 1.25 cm at the waist (P 9–10); two back darts stand at the thirds of the back waist (P 11), one
 * front dart at the middle of the front waist plus 1 cm, 10 cm long (H 2–12).
 *
 * @param body     needs waist girth, hip girth, side waist to hip
 * @param hipEase  of the whole girth, mm
 * @param waistEase of the whole girth at the skirt's waist seam, mm
 * @param length   centre front length, mm
 */
public record SkirtDraft(Body body, double hipEase, double waistEase, double length) implements Draft {
    /** Back half wider than the front half by this on each side of the middle (H: half of 1-2 plus 0.75 cm). */
    private static final double BACK_MORE = 7.5;

    /** P 9–10. */
    private static final double SIDE_RAISED = 12.5;

    /** Common practice: the back waist dips 1 cm at the centre. */
    private static final double BACK_DIP = 10;

    /** What the waist is eased into its band: 1/4–1/2 in (clothingpatterns101.com/sewing-ease, read). */
    private static final double EASED_INTO_BAND = 10;

    /** Dart lengths: front H; back from memory. */
    private static final double FRONT_DART = 100;

    private static final double[] BACK_DARTS = {140, 125};

    /** Allowances, common practice: waist 1 cm, seams 1.5 cm, hem 4 cm; finished band 3 cm, underlap 3 cm. */
    private static final double WAIST_ALLOWANCE = 10;

    private static final double SEAM_ALLOWANCE = 15;
    private static final double HEM_ALLOWANCE = 40;
    private static final double BAND = 30;
    private static final double UNDERLAP = 30;

    @Override
    public Garment draft() {
        Half front = half("front", 0, -BACK_MORE, 1);
        Half back = half("back", BACK_DIP, BACK_MORE, 2);
        double band =
                2 * (front.waist().closed().length() + back.waist().closed().length()) - EASED_INTO_BAND;
        double hip = hipDepth();

        PieceDraft frontPiece = new PieceDraft("skirt-front", "Front", front.contour("fold", EdgeRole.FOLD, 0))
                .cut(1, true)
                .level(LevelMark.along("waist", "waist"))
                .level(LevelMark.through("hip", new Point(front.width() / 2, hip))
                        .withReference(front.centre()))
                .darts(front.waist().darts())
                .notch("hip", new Point(front.width(), hip))
                .grain(new Point(front.width() * 0.34, hip + 60), new Point(front.width() * 0.34, length - 60))
                .label(new Point(front.width() * 0.5, hip + 115));
        PieceDraft backPiece = new PieceDraft(
                        "skirt-back", "Back", back.contour("centre back", EdgeRole.CENTRE, SEAM_ALLOWANCE))
                .cut(2, false)
                .level(LevelMark.along("waist", "waist"))
                .level(LevelMark.through("hip", new Point(back.width() / 2, hip))
                        .withReference(back.centre()))
                .darts(back.waist().darts())
                .notch("hip", new Point(back.width(), hip))
                .notch("zip", new Point(0, BACK_DIP + 180))
                .grain(new Point(back.width() * 0.34, hip + 60), new Point(back.width() * 0.34, length - 60))
                .label(new Point(back.width() * 0.5, hip + 115));
        PieceDraft bandPiece = Waistband.piece("skirt-band", band, BAND, UNDERLAP, WAIST_ALLOWANCE)
                .notch("side left", new Point(back.waist().closed().length() - EASED_INTO_BAND / 4, 2 * BAND))
                .notch("centre front", new Point(band / 2, 2 * BAND))
                .notch("side right", new Point(band - back.waist().closed().length() + EASED_INTO_BAND / 4, 2 * BAND));

        double top = Layout.HEAD + 50;
        List<PieceDraft.Face> faces = new Layout()
                .add(backPiece, false, top)
                .add(frontPiece, true, top)
                .addBelow(bandPiece)
                .faces();
        Pattern pattern = new Pattern(
                faces.stream().map(PieceDraft.Face::piece).toList(),
                List.of(Level.of("waist", LevelKind.WAIST), Level.of("hip", LevelKind.HIP)),
                List.of(
                        new Mate(
                                "side seam",
                                List.of(EdgeRef.of("skirt-front", "side")),
                                List.of(EdgeRef.of("skirt-back", "side")),
                                0),
                        new Mate(
                                "waistband",
                                List.of(new EdgeRef("skirt-front", "waist", 2), new EdgeRef("skirt-back", "waist", 2)),
                                List.of(EdgeRef.of("skirt-band", "seam")),
                                EASED_INTO_BAND)),
                body,
                Cloth.WOVEN,
                Map.of("waist", waistEase, "hip", hipEase),
                new Scale(1, 1, Scale.Proof.PHYSICAL_SIZE),
                List.of());
        return new Garment("skirt", "Straight skirt", Facts.of(body, pattern), RULES, pattern, faces);
    }

    private double hipDepth() {
        return Wearer.measure(body, "Side waist to hip");
    }

    /** One half of the front or the back, its darts set so that its sewn waist is a quarter of the wanted waist. */
    private Half half(String name, double dip, double more, int dartCount) {
        double hip = (Wearer.measure(body, "Hip girth") + hipEase) / 4;
        double waist = (Wearer.measure(body, "Waist girth") + waistEase) / 4;
        double width = hip + more;
        // Common practice: the side takes half of what a quarter loses from hip to waist, the same on front and back
        // so that the side seams are one curve; the darts take the rest.
        double side = 0.5 * (hip - waist);
        Point centre = new Point(0, dip);
        Point corner = new Point(width - side, -SIDE_RAISED);
        double intake = Solve.when(
                DraftLine.DART,
                w -> waist(name, centre, corner, width, w, dartCount).closed().length(),
                waist,
                0,
                45);
        return new Half(width, centre, corner, this, waist(name, centre, corner, width, intake, dartCount));
    }

    private DartedSeam waist(String name, Point centre, Point corner, double width, double intake, int dartCount) {
        Point guide = corner.minus(centre);
        // Half way between upright and square to the waist: common practice.
        Point inwards = guide.unit().quarterTurned().plus(new Point(0, 1)).unit();
        List<DartPlan> plans;
        if (dartCount == 1) {
            Point mouth = centre.plus(guide.unit().times((guide.norm() + intake) / 2 * 0.9 + 10));
            plans = List.of(DartPlan.of("front dart", mouth, mouth.plus(inwards.times(FRONT_DART)), intake));
        } else {
            Point first = centre.towards(corner, 1 / 3.0);
            Point second = centre.towards(corner, 2 / 3.0);
            plans = List.of(
                    DartPlan.of("back dart 1", first, first.plus(inwards.times(BACK_DARTS[0])), intake),
                    DartPlan.of("back dart 2", second, second.plus(inwards.times(BACK_DARTS[1])), intake));
        }
        Point sideway = sideSeam(corner, width).segments().get(0).tangent(0);
        Point square =
                DartedSeam.shutDirection(plans, 1, sideway).quarterTurned().times(-1);
        Point end = DartedSeam.shut(plans, 1, corner);
        Curve closed = new Curve(List.of(Fair.bow(centre, new Point(1, 0), end, square, 0.36)));
        return DartedSeam.open("waist", closed, plans, 1);
    }

    private Curve sideSeam(Point corner, double width) {
        Point hip = new Point(width, hipDepth());
        Point leaving = new Point((width - corner.x()) * 1.45, hip.y() - corner.y());
        return new Curve(List.of(
                Fair.bow(corner, leaving, hip, new Point(0, 1), 0.36), new Line(hip, new Point(width, length))));
    }

    private record Half(double width, Point centre, Point corner, SkirtDraft draft, DartedSeam waist) {
        Contour contour(String centreName, EdgeRole centreRole, double centreAllowance) {
            return new Contour(centre)
                    .edge("waist", EdgeRole.WAIST, WAIST_ALLOWANCE, waist.open())
                    .edge("side", EdgeRole.SEAM, SEAM_ALLOWANCE, draft.sideSeam(corner, width))
                    .edge("hem", EdgeRole.HEM, HEM_ALLOWANCE, new Point(0, draft.length()))
                    .edge(centreName, centreRole, centreAllowance, centre);
        }
    }

    private static final List<String> RULES = List.of(
            "Width of half the skirt = half hip girth + half the ease; back half 0.75 cm more than front half; front"
                    + " dart at the middle of the front waist + 1 cm, 10 cm long. Handout for drafting skirt block,"
                    + " wikieducator.org (read).",
            "Side raised 1.25 cm at the waist; two back darts at the thirds of the back waist. How to draft a skirt"
                    + " block, project-patterns.co.uk, 22 Nov 2018 (read as far as the back darts).",
            "Waist 1 cm longer than the band and eased in: 1/4–1/2 in, clothingpatterns101.com/sewing-ease (read).",
            "Back darts 14 and 12.5 cm long: from memory.",
            "Back waist 1 cm lower at the centre; the side takes half of what a quarter loses from hip to waist and"
                    + " the darts the rest, their width solved so that the sewn waist is exact; all allowances; zip"
                    + " 18 cm; band 3 cm finished with 3 cm underlap: common practice.");
}
