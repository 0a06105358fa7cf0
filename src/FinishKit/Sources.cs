namespace FinishKit;

/// <summary>What the library's own formulas and defaults rest on. Each id is listed in docs/sources.md; a test compares the two.</summary>
internal static class Sources
{
    internal static readonly Source Given = Source.Supplied("the caller's figure");

    internal static readonly Source Circle = Source.Derived("geometry-circle", "Circle through the ends and the top of an arc", "Pythagoras on half the chord and the radius less the rise");

    internal static readonly Source Beam = Source.Derived("beams-three-moments", "Beam on pinned supports that may be displaced", "slopes of neighbouring spans agree over each support; a rectangle has I = b t³/12 and Z = b t²/6");

    internal static readonly Source ReadingError = Source.CommonPractice("reading-error", "a gap under a straightedge is read to half a millimetre");

    internal static readonly Source ToleranceSum = Source.Derived("tolerance-sum", "Sum of toleranced lengths", "worst case adds deviations; variances of independent terms add; a tolerance is read as plus and minus three sigma");

    internal static readonly Source FastenerStack = Source.Derived("fastening-stack", "Fastener in a stack of layers", "the tip lies the set depth plus length times cosine of the drive angle below the surface");

    internal static readonly Source JobHits = Source.Derived("fastening-job", "Hits over a job", "expected hits add up whatever is shared; the chance of any hit is the mean, over the batch deviation, of one less the chance that every fastener misses");

    internal static readonly Source Nds = Source.Published("NDS-2018", "National Design Specification for Wood Construction", "American Wood Council", 2018, "12.2", SourceReading.Copy, "equations as transcribed in the open finite-element library xc and quoted at engineeringtoolbox.com d_1814 and d_1815");

    internal static readonly Source NdsMinimumPenetration = Source.Published("NDS-2018", "National Design Specification for Wood Construction", "American Wood Council", 2018, "minimum penetration 6 D", SourceReading.Copy, "answer at awc.org, May 2006; 6 D including the tip");

    internal static readonly Source WoodHandbook = Source.Published("FPL-GTR-282", "Wood Handbook: Wood as an Engineering Material", "USDA Forest Service, Forest Products Laboratory", 2021, "chapter 8", SourceReading.Copy, "coefficients 54.12, 108.25 and 125.4 as quoted in an open source file");

    internal static readonly Source Eurocode5 = Source.Published("EN-1995-1-1", "Eurocode 5: Design of timber structures, EN 1995-1-1", "CEN", 2004, "8.3.2, 8.7.2", SourceReading.Copy, "equations 8.24 to 8.26 and 8.38 to 8.40 as coded in the open NODEMaple library; the rule on permanent load at eurocode.us");

    internal static readonly Source NdsInSi = Source.Derived("nds-si", "NDS withdrawal coefficient in N and mm", "1 lbf = 4.4482216152605 N and 1 in = 25.4 mm, both exact (1 psi = 0.006894757293 MPa); 1380, 2850 and 1800 become 9.514765 N/mm2, 19.65006 N/mm2 and 27.86121 N/mm^1.75 to seven digits");

    internal static readonly Source WithdrawalSum = Source.Derived("withdrawal-sum", "Withdrawal of a whole fastener", "force per length of penetration times penetration");

    internal static readonly Source NailUltimate = Source.Published("FPL-093", "Nail-withdrawal resistance of American woods", "USDA Forest Service, Forest Products Laboratory", 1965, "p = 6900 G^(5/2) D", SourceReading.Copy, "text at docslib 2677380; 6900 is five times the 1380 of the NDS; engineeringtoolbox.com d_1814 says so in words");

    internal static readonly Source Eurocode5Predrill = Eurocode5.At("8.3.1.2, equation 8.18", SourceReading.Copy);

    internal static readonly Source Eurocode5FromMemory = Source.Published("EN-1995-1-1", "Eurocode 5: Design of timber structures, EN 1995-1-1", "CEN", 2004, "2.4.1, 3.1.3, 8.7.2", SourceReading.Memory, "not at hand: material factor 1.3 of connections, factor 0.6 of permanent load indoors, screws at 30 degrees to the grain or more and 6 diameters deep or more");

    internal static readonly Source PlywoodWithdrawal = Source.Judgement("withdrawal-plywood", "plywood holds less than solid wood of the same density: 0.8 of it, 0.7 to 0.85");

    internal static readonly Source RoadAcceleration = Source.Judgement("retention-acceleration", "3 g in any direction, gravity included, 2 to 5 g: a rough road, not a crash");

    internal static readonly Source RetentionLoad = Source.Derived("retention-load", "Load of a hung mass", "mass times acceleration in g times standard gravity, 9.80665 m/s2 by definition");

    internal static readonly Source RetentionCount = Source.Derived("retention-count", "Fasteners for a load", "load over the capacity of one, rounded up; a limit exactly met is met");

    internal static readonly Source RetentionDesignFactor = Source.Derived("retention-design-factor", "Capacity taken as it stands", "an NDS value is allowable already, and a supplied one is taken for allowable");

    internal static readonly Source AdhesiveNotCounted = Source.Judgement("retention-adhesive", "adhesive counts only where the caller gives a strength that may be relied on");

    internal static readonly Source BendElastic = Source.Derived("bend-elastic", "Radius at which a sheet reaches its bending strength", "the strain at the face is t/(2 R) and the stress E times it: R = E t/(2 f) to the sheet's middle, which lies half a thickness inside a hollow surface and outside a bulging one");

    internal static readonly Source HoldDownRows = Source.Derived("bend-hold-down", "Sheet held to an arc at rows", "a beam on supports displaced to the arc by the three-moment equations; the peak radius is that of the arc over the greatest moment");

    internal static readonly Source WorstRows = Source.Derived("bend-worst-rows", "No rows bend a sheet more than 1.5 times the arc", "each inner moment is 1.5 less a weighted half of its neighbours', so all lie between 0.75 and 1.5 of E I/R whatever the spacing, and three rows reach 1.5");

    internal static readonly Source BackedHollow = Source.Derived("bend-backed-hollow", "Sheet held at rows to a hollow surface that is behind all of it", "it cannot pass the surface, so it is tangent to it at every inner row; the outer bay is a beam propped at the edge and clamped at the row, whose moment is 1.5 E I/R for any number of rows");

    internal static readonly Source EdgeLift = Source.Derived("bend-edge-lift", "Edge of a sheet on a bulging surface", "a pull F per width at the edge makes the moment E I/R at l = E I/(R F); from there on the curvature falls off and the edge lifts by l^2/(6 R); where l is more than half the sheet, the sheet touches at its middle only");

    internal static readonly Source SheetStiffness = Source.Derived("bend-stiffness", "Bending stiffness of a sheet per width", "E t^3/12, as a beam: what the width adds (at most a tenth) is left out");

    internal static readonly Source MembraneStrain = Source.Derived("bend-membrane", "Strain of a flat sheet forced to two curvatures", "a strip along the long side is strained by b^2/(12 R1 R2) at its edges and the other way by half of it at its middle, b the shorter side: stretched at the edges on a saddle, squeezed there on a bowl");

    internal static readonly Source BendFactor = Source.Judgement("default-bend-factor", "the elastic radius at the characteristic strength is doubled, 1.5 to 3: the strength is that of a short test, and the sheet stays bent for good");

    internal static readonly Source BendFactorOfAllowable = Source.Judgement("default-bend-factor-allowable", "an allowable strength has a factor in it already: no further one is put on the elastic radius");

    internal static readonly Source EdgeLiftLimit = Source.Judgement("default-edge-lift", "an edge on a bulging surface may stand off by 0.5 mm");

    internal static readonly Source DoubleCurvature = Source.Judgement("bend-double-limit", "double curvature is taken where the product of the two rises over the shorter side is at most a quarter of the thickness squared (a plate buckles at about the thickness squared) and the stretch takes at most a tenth of the bending strength");

    /// <summary>Of strips and panels alike.</summary>
    internal static readonly Source FixingSpacing = Source.CommonPractice("default-fixing-spacing", "fixings of a strip or panel to metal are 250 mm apart at most, 150 to 300");

    internal static readonly Source StripWidth = Source.CommonPractice("default-strip-width", "a furring strip is 40 mm wide, 35 to 60");
    internal static readonly Source CircleFit = Source.Derived("geometry-circle-fit", "Circle nearest to measured points", "least sum of squared distances square to the circle; standard errors from the derivatives at the least, scatter with divisor n - 3");

    internal static readonly Source PointOff = Source.Judgement("geometry-fit-doubt", "a point is doubted where it lies more than 0.5 mm and more than 4 times the scatter of the others off");
    internal static readonly Source StripSpacing = Source.Derived("furring-spacing", "Strips over a run", "between two ribs or fixed strips a distance d apart at least ceiling(d/S) - 1 strips are needed, and equal bays have the smallest largest bay and the least sum of squares; a shortest path over fixed strips and ribs gives the rest");

    internal static readonly Source FurringLayout = Source.Derived("furring-layout", "Strips of a face", "end strips half a strip in, jambs beside and trimmers above and below each opening, strips along breaks; every other strip is cut where it meets one of these, so that pieces and what they meet add up to the height");

    internal static readonly Source StripRipping = Source.Derived("furring-ripping", "Strips from a sheet", "n strips have n - 1 kerfs between them; a bin counted with one kerf more holds pieces counted with one kerf each");
    internal static readonly Source SlatSpread = Source.Derived("slats-spread", "Equal gaps between slats", "what the slats leave of the width, shared by the gaps; a face that tapers leaves less where it is narrower");

    internal static readonly Source SlatsOnCurve = Source.Derived("slats-on-curve", "Straight slats on a circle", "chords on a hollow and tangents on a bulge; neighbouring slats turn by the angles that a slat and a gap subtend, and edges square to them lean by half of that");

    internal static readonly Source BoardCutting = Source.Derived("stock-cutting", "Pieces cut from boards", "n pieces have n - 1 kerfs between them; a board counted with one kerf more holds pieces counted with one kerf each; boards whose pieces cannot be worth as much as all parts do not give them, whatever values the parts are given");

    internal static readonly Source BoardJoints = Source.Derived("boards-joints", "Joints chosen with the boards they are cut from", "whatever pieces are worth, the boards must hold the value of the courses' cheapest choice of joints, which is a shortest path over the courses because only neighbours restrict each other");
    internal static readonly Source CourseBreak = Source.Derived("boards-break", "Board across a change of lean", "resting on two planes that turn by delta, its middle over the break, a board w wide has w/2 tan(delta/2) under its middle or edges; two edges that meet there halve the turn");

    internal static readonly Source CourseLayout = Source.Derived("boards-courses", "Courses over a face", "joints lie one cover apart; a piece is what lies between a joint and the next edge, and its narrowest over an error of the set-out is at an end of the error or at an edge that a joint passes");
    internal static readonly Source ProfileBreaks = Source.Derived("geometry-profile-breaks", "Straight bands of a measured profile", "a least-squares line through each band's own stations; the least sum over all choices of breaks by dynamic programming, since what is best above a break does not depend on what lies below it; a station added to a line adds the square of its distance from the line so far, over 1 + 1/n + d²/S");

    internal static readonly Source Girth = Source.Derived("geometry-girth", "Length along a measured profile", "Pythagoras from station to station");

    internal static readonly Source Packers = Source.Derived("geometry-packers", "Line or plane that touches points from one side", "the sum and the greatest of the packings are convex and made of flat pieces in the tilt, so each is least at a corner between pieces: a tilt along two pairs of points (one pair for a line)");

    internal static readonly Source CompoundCut = Source.Derived("geometry-compound-cut", "Cut of two leaning pieces that meet", "the cut lies in the plane that halves the angle between the faces; its normal, taken along the piece, across it and out of its face, gives both angles; a piece in a corner and the side of a hopper are cases of it");

    internal static readonly Source SheetNesting = Source.Derived("stock-nesting", "Rectangles cut from sheets", "pieces side by side have a kerf between them and none at the edge; a sheet counted with one kerf more each way holds pieces counted with one kerf each way; sheets on which the pieces cannot be worth as much as all of them do not hold them, whatever the pieces' values");

    internal static readonly Source DualFeasible = Source.Published("stock-dual-feasible", "New classes of fast lower bounds for bin packing problems", "Mathematical Programming 91", 2001, "Fekete and Schepers", SourceReading.Memory, "not at hand: a function of lengths is dual feasible where lengths that fit side by side never have more than 1 together; products of two bound what a sheet holds. Each function used is proven in docs/sheet-nesting.md, so no figure rests on memory");
}
