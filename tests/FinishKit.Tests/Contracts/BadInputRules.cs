using System;
using System.Collections.Generic;
using System.Text.RegularExpressions;

namespace FinishKit.Tests.Contracts;

/// <summary>
/// Where bad input is not refused, and why. Patterns: <c>*</c> stands for anything, <c>|</c> for or. The first rule that covers a
/// row decides it.
/// </summary>
internal static class BadInputRules
{
    internal static IReadOnlyList<Rule> All { get; } =
    [
        // Comparing
        Taken("*.Equals(*|*.op_Equality(*|*.op_Inequality(*", "*", "*", "comparing never throws, whatever is compared"),

        // Calculators: nothing, and less than nothing, where it means something
        Taken("Arc.FromChordAndRise(*", "rise", "default|-1", "flat; bulging into the room"),
        RefusedAt("chord", "Arc.FromChordAndRadius(*", "radius", "-1"),
        RefusedAt("arcLength", "Arc.FromRadiusAndArcLength(*", "radius", "-1"),
        RefusedAt("rise", "Arc.FromRiseAndRadius(*", "radius", "-1"),
        Taken("Arc.FromChordAndHalfAngle(*", "halfAngle", "default|-1", "flat; bulging into the room"),
        Taken("CircularArc.*", "riseError", "default", "a reading without error"),
        Found("FastenerLength.TipClearance(*", "depthBehind", "default", "fastening-tip-touches"),
        Taken("FastenerLength.TipClearance(*", "setDepth", "default", "a head flush with the surface"),
        Taken("FastenerLength.TipClearance(*|BoardProfile.Layers(*|FastenerJob.ThroughBoard(*", "driveAngle", "default", "square to the face"),
        Found("Withdrawal.Nds*", "*enetration", "default", "fastening-nds-penetration-short"),
        Found("Withdrawal.Handbook*", "*enetration", "default", "fastening-ultimate-not-design"),
        Found("Withdrawal.Eurocode5SmoothNail(*", "pointPenetration|nail", "default|PointPenetration default", "fastening-eurocode5-penetration-none"),
        Found("Withdrawal.Eurocode5SmoothNail(*", "nail", "HeadSideThickness default", "fastening-eurocode5-predrill"),
        Found("Withdrawal.Eurocode5Screw(*", "angleToGrain", "default", "fastening-eurocode5-screw-angle"),
        Taken("WithdrawalCapacity.Supplied(*", "force", "default", "a capacity of nothing"),
        Taken("Retention.FastenersNeeded(*", "mass|hung", "default|Mass default", "nothing hangs there: no fastener needed"),
        Found("Retention.FastenersNeeded(*", "perFastener|hung", "default|PerFastener default", "fastening-no-capacity"),

        RefusedAt("job.Parts[0].Outline", "SheetNesting.Nest(*", "job", "Parts [0] Outline [0] default"),
        RefusedAt("cut", "new RunEnd(*", "cut", "null"), // the good kind is the edge, which always has one
        RefusedAt("hung.AdhesiveArea", "Retention.FastenersNeeded(*", "hung", "AdhesiveStrength default"),
        RefusedAt("hung.AdhesiveStrength", "Retention.FastenersNeeded(*", "hung", "AdhesiveArea default"),

        // Slats
        Taken("SlatSpread.Spread(*", "leastGap|run", "default|LeastGap default", "slats may touch"),
        Taken("SlatSpread.Spread(*", "run", "Stations empty", "a face that does not taper"),
        Taken("new SlatRun(*", "*", "*", "stored unchecked: the calculator checks it"),
        Found("SlatCurve.Fit(*", "gap", "default", "slats-face-closed"),
        Taken("SlatCurve.WidestSlat(*", "standOff", "default", "nothing may stand off: a slat of no width"),
        Taken("SlatCount.*", "station", "0", "the first station"),

        // A job: what a member may be besides its usual value
        Taken("FastenerLength.*", "job|layers", "*[0] Name null|*[0] Name empty|*[0] Name 100,000 brackets", "a name is for messages; without one the layer is called layer"),
        Taken("FastenerLength.*", "job|layers", "*[0] Compressed default", "a layer that gives way altogether"),
        Taken("FastenerLength.*", "job|behind", "*Distance default", "what is behind bears on the last layer"),
        Taken("FastenerLength.*", "job", "SetDepth default|DriveAngle default|RequiredClearance default|LeastBite default|TargetBite default|MarginalChance 0|HitsLimit 0", "zero is in the range"),
        Taken("FastenerLength.*", "job", "Sheets empty|OtherSeries empty", "no remedy of that kind is looked for"),

        // Beams
        Taken("ContinuousBeam.*", "load", "default|-1", "no load, and a pull"),
        Taken("BeamResponse.*", "place", "default", "over the first support"),
        Taken("ContinuousBeam.*", "beam", "Displacements empty|Displacements [0] default|Displacements [0] -1", "on the line, and off it to the other side"),
        Taken("ContinuousBeam.UnderLoads(*", "loads", "empty", "only the displaced supports bend it"),
        Taken("BoardSpan.*", "question", "PointLoad default|UniformLoad default", "no load of that kind"),
        Taken("new BeamSection(*|new BayQuestion(*|new Beam(*|BeamLoad.*", "*", "*", "stored unchecked: the calculator checks it"),

        // Table rows and profiles of the caller's own
        Taken("new FastenerSeries(*|new PlywoodKind(*|new SheetGoods(*|new SpeciesCombination(*|new StrengthClass(*|new WoodSpecies(*|Layer.Compressible(*", "name|family", "empty|100,000 brackets", "a name is the caller's"),
        Taken("FastenerSeries.set_Tolerances(*", "value", "empty", "no tolerance is known"),
        Taken("new LengthTolerance(*", "deviation", "default", "lengths are exact"),
        Taken("*SpecificGravity*.ToDensity(*", "moistureContent", "0", "ovendry"),

        // Reading and writing
        Taken("Measure.Mm(*|Measure.Inch(Double *|Measure.Feet(*", "*", "0|10^9", "a length; the calculator checks its range"),
        RefusedAt("inches", "Measure.Feet(*", "feet", "-1"),
        Taken("Measure.Mm(*|Measure.Inch(Double *", "*", "-1", "a length; the calculator checks its range"),
        Taken("Measure.Format*", "length", "default|-1", "written with its sign"),
        Taken("Measure.Format*", "decimals", "0", "whole millimetres or inches"),
        Taken("Measure.TryParseLength(*", "text", "*", "the answer is no"),

        // Toleranced lengths
        Taken("TolerancedLength.Between(*", "least", "default|-1", "a length may be zero or below"),
        RefusedAt("greatest", "TolerancedLength.Between(*", "least", "10^9"),
        Taken("TolerancedLength.PlusMinus(*", "deviation", "default", "an exact length"),
        Taken("TolerancedLength.Sum(*", "terms", "[0] default|[0] -1|[0] 10^9", "a negative length is taken off"),

        // Stored as given, so that a Check method can report it; every calculator checks it
        Taken("new TolerancedLength(*|TolerancedLength.FromLength(*|TolerancedLength.op_Implicit(*", "*", "*", "stored unchecked: the members that compute and every calculator check it"),
        Taken("TolerancedLength.PlusMinus(*", "nominal", "*", "stored unchecked: the members that compute and every calculator check it"),
        Refused("Layer.Furring(SheetGoods *|Layer.Panel(*|Layer.Compressible(*", "*", "null"),
        Taken("new Layer(*|Layer.*", "*", "*", "stored unchecked: every calculator checks it"),
        Taken("new Behind(*|Behind.*", "*", "*", "stored unchecked: every calculator checks it"),
        Taken("new FastenerJob(*|new HungMass(*|new Eurocode5Nail(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("new OvendrySpecificGravity(*|new SpecificGravityAt12(*|new CharacteristicDensity(*", "*", "*", "stored unchecked: the calculator checks it"),

        // Species and measured points
        Taken("WoodSpecies.set_*Shrinkage(*|WoodSpecies.set_*Movement(*", "value", "0", "wood that does not move"),
        Taken("CircleFit.Through(*", "points", "[0] default", "a point at the end of the string, on it"),
        Taken("new MeasuredPoint(*", "*", "*", "stored unchecked: the calculator checks it"),

        // Plain carriers of what their maker says
        Taken("new Figure(*", "*", "empty|100,000 brackets", "a carrier: the maker's text"),
        Taken("new Figure(*", "value", "*", "a carrier: the maker's number"),
        Taken("Figure.set_*", "value", "empty|100,000 brackets|NaN|+infinity|-infinity|0|-1|10^9|1e308", "a carrier: what its maker or a reader of stored figures sets"),
        Taken("new DefaultUsed(*", "figure", "default", "a carrier"),
        Taken("new Finding(*|new InputProblem(*|new WorkingStep(*|new Workings(*|Source.*", "code|message|parameter|value|allowed|meaning|formulaTex|title|id|rule|reason|derivation|what|publisher|place|note", "empty|100,000 brackets", "a carrier: the maker's text"),
        Taken("new Finding(*", "severity", "*", "a carrier; severities may be added"),
        Taken("Source.Published(*", "year|reading", "*", "a carrier: the maker's words"),
        Taken("new WorkingStep(*", "value", "default", "a carrier"),
        Stored("new Finding(*", "values", "empty|* items|[0] default", "a carrier of a list that the maker made"),
        Stored("new WorkingStep(*", "inputs", "empty|* items|[0] default", "a carrier of a list that the maker made"),
        Stored("new Workings(*", "steps", "empty|* items|[0] null", "a carrier of a list that the maker made"),
        Stored("new FastenerChoice(*", "candidates|remedies|findings|defaultsUsed", "empty|[0] null", "a carrier of a list that the maker made"),
        Refused("new FastenerChoice(*", "job", "null"),
        Taken("new FastenerChoice(*", "job", "*", "a carrier: a job is checked where it is computed"),
        Taken("new DriveAngleRemedy(*", "least|angle", "default", "square to the face"),

        // Panels and bent strips
        Taken("new BentSheet(*|new BendCase(*|new HoldDownCase(*|new BentStripCase(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("PanelBend.*|HoldDown.*", "sheet|panel", "*Name empty|*Name 100,000 brackets", "a name is for messages"),
        Found("PanelBend.Judge(*|HoldDown.OnArc(*", "panel", "WallRadius -1", "panels-bend-too-tight"),
        Found("HoldDown.LeastEqualRows(*", "wallRadius", "-1", "panels-bend-too-tight"),
        Found("BentStrip.Judge(*", "strip", "BowRadius -1", "furring-strip-bend-too-tight"),
        Taken("PanelBend.Judge(*|HoldDown.OnArc(*|BentStrip.Judge(*", "panel|strip", "Rows [0] default", "a row at the edge"),
        Refused("PanelBend.Judge(*", "panel", "Girth null|Width null"),
        Found("PanelBend.Judge(*", "panel", "BowAlong -1", "panels-double-curvature"),
        Taken("BentStrip.Judge(*", "strip", "Alternatives empty", "no other sheet is looked for"),
        // Strips
        Taken("StripSpacing.Space(*", "run", "FixedPositions [0] default|Ribs [0] Centre default|Ribs [0] Centre -1|Ribs [0] HalfWidth default", "where the run starts; a rib before it; a rib as thin as a line"),
        Taken("StripSpacing.Space(*", "run", "Ribs empty", "no ribs"),
        Taken("StripSpacing.Space(*", "fixedPositions|ribs", "[0] default|[0] Centre default|[0] Centre -1|[0] HalfWidth default", "as in a run"),
        Taken("StripSpacing.Space(*", "ribs", "empty", "no ribs"),
        Taken("new PlacedStrip(*", "position|rib", "default|0", "where the run starts; the first rib"),
        Taken("new StripLayout(*", "smallestFeasibleBay", "default", "a bay of nothing, of strips at one place"),
        Stored("new StripLayout(*", "strips", "1001 items", "many strips are allowed"),
        Stored("new StripLayout(*", "findings|defaultsUsed", "empty|[0] null", "a carrier of a list that the maker made"),
        Refused("new StripLayout(*", "run", "null"),
        Taken("new StripLayout(*", "run", "*", "a carrier: a run is checked where it is computed"),
        Taken("new StripRun(*|new RibLine(*|new RippingJob(*|new StripPart(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("StripRipping.Rip(*", "job", "Trim default|Kerf default", "a sheet with good edges; a knife"),

        // Layout of a face
        Taken("FurringLayout.LayOut(*", "face", "Openings empty|Breaks empty|Stops empty|Ribs empty|Rails empty|ButtJoints empty", "none of that kind"),
        Taken("FurringLayout.LayOut(*", "face", "Openings [0] FromU default|Openings [0] FromV default|Stops [0] FromU default|ButtJoints [0] default", "at the edge of the face"),
        Taken("FurringLayout.LayOut(*", "face", "Breaks [0] LeanChange default|Breaks [0] LeanChange -1|BreakLimit default", "no change, and one to the other side; every change ends a course"),
        Taken("FurringLayout.LayOut(*", "face", "R* [0] Centre default|R* [0] Centre -1|R* [0] From default|R* [0] From -1|R* [0] To default|R* [0] Setback default", "a member at the edge, or past it; one that is flush"),
        Taken("FurringLayout.LayOut(*", "face", "FrontAtFoot default|FrontAtHead default|PointLoad default", "an edge at the start; no load"),

        // Cutting boards
        Taken("new CuttingJob(*|new BoardPart(*|new StockBoard(*|new BoardOffcut(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("BoardCutting.Cut(*", "job", "Parts [0] Name empty|Offcuts empty|EndTrim default|Kerf default", "a name without words; none on hand; boards with good ends; a knife"),
        Taken("BoardCutting.Cut(*", "job", "Stock [0] Price 0", "bought already"),
        Taken("BoardCutting.Cut(*", "job", "Stock [0] Available 0|Parts 1001 items|Effort 10^9", "none of a kind to be had; many parts and a long search are allowed"),
        Taken("new FurringFace(*|new FaceOpening(*|new FaceBreak(*|new FurnitureStop(*|new ShellMember(*", "*", "*", "stored unchecked: the calculator checks it"),

        // Joints
        Taken("BoardJoints.Choose(*", "job", "Runs [0] Course 0|Runs [0] Start default|Runs [0] Start -1|Runs [0] Name empty|Strips [0] default|Strips [0] -1", "a place on the wall, and a name"),
        Found("BoardJoints.Choose(*", "job", "Strips empty", "boards-joint-none"),
        Taken("BoardJoints.Choose(*", "job", "Stagger 0|Kerf default|EndTrim default|Offcuts empty", "zero is in the range"),
        Taken("BoardJoints.Choose(*", "job", "Stock [0] Price 0|Stock [0] Available 0", "boards bought already; none of a kind to be had"),
        Taken("BoardJoints.Choose(*", "job", "Effort 10^9", "the most that is allowed is more"),
        Taken("new JointRun(*|new JointJob(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("BoardJoints.Choose(*", "job", "EndGap default", "no gap is left"),
        // Courses
        Taken("BoardCover.*", "gap|reveal", "default", "boards pushed tight"),
        Taken("CourseBreaks.Judge(*", "leanChange", "default|-1", "no change; a ridge"),
        Taken("CourseBreaks.Judge(*", "limit", "default", "every change ends a course"),
        Taken("CourseLayout.LayOut(*", "face", "Openings empty", "no opening"),
        Taken("CourseLayout.LayOut(*", "face", "BandRules empty", "one rule for all bands"),
        Taken("CourseLayout.LayOut(*", "face", "Openings [0] FromU default|Openings [0] FromV default", "at the edge of the face"),
        RefusedAt("face.BandRules", "CourseLayout.LayOut(*", "face", "Breaks empty|Breaks [0] LeanChange default|Breaks [0] LeanChange -1"),
        Taken("CourseLayout.LayOut(*", "face", "BreakLimit default|SetOutError default|LeastCourse default", "every change ends a course; the knife edge; nothing is too narrow"),
        Taken("new CourseFace(*", "*", "*", "stored unchecked: the calculator checks it"),
        // Moisture
        Taken("EquilibriumMoisture.*", "temperature", "-1", "a degree of frost"),
        Taken("EquilibriumMoisture.*", "relativeHumidity", "default", "dry air"),
        Taken("EquilibriumMoisture.*", "moistureContent", "0", "ovendry wood"),

        // Shape of the shell
        Taken("ProfileBreaks.Find(*", "stations", "[0] default", "a station at the start of the plumb line, on it"),
        Taken("WallProfile.HeightAt(*", "girth", "default", "at the foot"),
        Taken("WallProfile.GirthInFront(*", "girth|distance", "default", "at the foot; on the wall itself"),
        Taken("new Direction(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("CompoundCut.InCorner(*", "spring", "default", "flat on the wall"),
        Taken("CompoundCut.OfSides(*", "pitch", "default", "a flat frame"),
        Taken("new SurfacePoint(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("Flattening.*", "points", "[0] default", "a point where the string starts, on it"),
        Taken("Flattening.*", "leastPacking", "default", "no packing where it touches"),
        Taken("PackedLine.OffsetAt(*|PackedPlane.OffsetAt(*", "along|u|v", "default|-1", "at the start, or before it"),
        // Edges and end cuts
        Taken("EdgeCurve.Through(*", "points", "[0] default", "a point at the foot of the plumb line, on it"),
        Taken("EdgeCurve.Through(*", "differenceLimit", "default", "any difference is found"),
        Taken("EdgeCurve.Straight(*|EdgeCurve.OnArc(*", "lower", "default", "a point at the foot of the plumb line, on it"),
        Taken("EdgeCurve.OnArc(*", "rise", "default|-1", "straight; bowed to the other side"),
        Taken("EndCuts.Schedule(*", "job", "Datum default|Datum -1", "offsets may count from any line, also from one between the ends of the boards"),
        Taken("EndCuts.Schedule(*", "job", "ScribeTolerance default|HiddenWidth default", "whatever is left is scribed; square-edged boards"),
        // Nesting on sheets, and rolls
        Taken("new NestingJob(*|new SheetPart(*|new StockSheet(*|new SheetOffcut(*|new RollJob(*|new RollPart(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("SheetNesting.Nest(*", "job", "Parts [0] Name empty|Offcuts empty|Trim default|Kerf default", "a name without words; none on hand; sheets with good edges; a knife"),
        Taken("SheetNesting.Nest(*", "job", "Stock [0] Price 0", "bought already"),
        Taken("SheetNesting.Nest(*", "job", "Stock [0] Available 0|Parts 1001 items|Effort 10^9", "none of a kind to be had; many parts and a long search are allowed"),
        Taken("RollCutting.Cut(*", "job", "Parts [0] Name empty|Selvedge default|Between default|Effort 10^9", "a name without words; all of the width is cloth; shears take nothing; a long search is allowed"),
        Taken("new EndCutJob(*", "*", "*", "stored unchecked: the calculator checks it"),
        // Movement
        Taken("DimensionalChange.FromShrinkage(*", "shrinkage|takenAt", "0", "wood that does not move; the ovendry size"),
        Taken("DimensionalChangeCoefficient.Supplied(*", "coefficient", "0", "wood that does not move"),
        Taken("BoardMovement.OfWidth(*|BoardMovement.AlongTheGrain(*", "fromMoisture|toMoisture", "0", "ovendry wood"),
        Taken("BoardMovement.AlongTheGrain(*", "warming", "0|-1", "no warmer, and cooler"),
        Taken("BoardMovement.OverSeason(*", "job", "FittingMoisture 0|DriestMoisture 0|LeastGap default|EndGap default|LeastCovered default", "zero is in the range"),
        Taken("new BoardMovementJob(*", "*", "*", "stored unchecked: the calculator checks it"),

        // Wrapped panels
        Taken("PanelWrap.*", "job|build", "*FoamThickness default|*SqueezedFoam default|*EdgeGap default|*Joint default", "no foam, foam squeezed to nothing, panels that touch"),
        Taken("PanelWrap.Plan(*", "job", "Joints empty", "one panel"),
        Refused("WrapJob.From(*", "build", "null"),
        Taken("WrapJob.From(*", "build", "*", "stored unchecked: the calculator checks it"),
        Taken("WrapJob.From(*", "course", "0", "the course at the foot"),
        Taken("PanelWrap.Plan(*", "job", "Windows empty|Windows [0] CornerRadius default", "no window; one with square corners"),
        Found("PanelWrap.Plan(*", "job", "Windows [0] Opening FromU default|Windows [0] Opening FromV default", "panels-wrap-window-not-inside"),
        Taken("new WrapBuild(*|new PanelWindow(*|new WrapJob(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("PatternMatch.Lay(*", "job", "RepeatA* default|CentredOnPanel 0", "nothing to match that way; the first panel"),
        Taken("PanelAdhesive.Needed(*", "bonded", "default", "a bond of nothing"),
        Taken("PanelStaples.SetOut(*", "job", "PlyThickness deviations of default|UnderCrown default|FoamUnderCrown default|Margin default|LeastBite default", "ply as it is; nothing under the crown; zero is in the range"),
        Taken("WrapComparison.Compare(*", "choice", "*Area default|*Price 0|*Extras 0|*Hours default", "what costs nothing and takes no time"),
        Taken("new PatternJob(*|new StapleJob(*|new WrapChoice(*", "*", "*", "stored unchecked: the calculator checks it"),

        // Fixings into thin metal
        Taken("new MetalScrewJob(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("MetalScrew.Choose(*", "job", "*[0] Name null|*[0] Name empty|*[0] Name 100,000 brackets", "a name is for messages; without one the layer is called layer"),
        Taken("MetalScrew.Choose(*", "job", "*[0] Compressed default", "a layer that gives way altogether"),
        Found("MetalScrew.Choose(*", "job", "Behind Distance default", "fastening-metal-none-fits"),
        Taken("new RivetNutJob(*|new PanelRow(*|new PanelFixingJob(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("PanelFixingJob.From(*", "hold", "*", "stored unchecked: the calculator checks it"),
        Taken("new PanelJointLine(*|new PanelWall(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("PanelSplit.Split(*", "wall", "Openings empty|Ribs empty|Rails empty|Openings [0] FromU default|Openings [0] FromV default", "none of them; an opening that reaches the edge"),
        Taken("PanelSplit.Split(*", "wall", "Ribs [0] default|Rails [0] default|Ribs [0] Position default|Rails [0] Position default|Ribs [0] MetalWidth default|Rails [0] MetalWidth default", "metal at the edge, and too narrow for a joint"),
        Taken("PanelSplit.Split(*", "wall", "Effort 10^9", "a long search is allowed"),
        Taken("PanelSplit.Split(*", "wall", "Reveal default|Landing default|CornerDistance default|LeastPanel default", "zero is in the range"),
        Taken("new RivetNutSize(*", "name", "empty|100,000 brackets", "a name is the caller's"),
        Taken("new RivetNutSize(*", "leastGrip", "default", "no least"),
        Taken("RivetNut.Fit(*", "job", "*[0] Name null|*[0] Name empty|*[0] Name 100,000 brackets", "a name is for messages; without one the layer is called layer"),
        Taken("RivetNut.Fit(*", "job", "*[0] Compressed default", "a layer that gives way altogether"),
        Found("RivetNut.Fit(*", "job", "Behind Distance default", "fastening-rivet-none-fits"),
        Taken("RivetNut.Fit(*", "job", "ThreadFrom default|Paint default|MatingSheet default|Flange default|SetDepth default|LengthTolerance default|RequiredClearance default|NutHold default", "zero is in the range"),
        Taken("PanelFixings.Place(*", "job", "Rows [0] default|Rows [0] Position default|Rows [0] Pull default|Rows [0] Pull -1|HungMass default|EdgeDistance default", "a row at the edge, one that bears, nothing hung, fixings at the very edge"),
        Taken("MetalScrew.Choose(*", "job", "SetDepth default|LengthTolerance default|ThreadsBeyond 0|Point default|RequiredClearance default|HeadHold default", "zero is in the range"),
        // Bowed both ways
        Taken("new BowedPanel(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("DoubleCurvature.Judge(*", "panel", "*Name empty|*Name 100,000 brackets", "a name is for messages"),
        RefusedAt("panel.Girth", "DoubleCurvature.Judge(*", "panel", "Around -1"),
        RefusedAt("panel.Width", "DoubleCurvature.Judge(*", "panel", "Along -1"),
        // Layers over a form
        Taken("new LaminatedBend(*|new LayersOrSheet(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("LaminatedBend.Of(*", "layer|radius", "*", "stored unchecked: the calculator checks it"),
        Taken("Lamination.*", "bend|choice", "*Name empty|*Name 100,000 brackets", "a name is for messages"),
        Found("Lamination.Compare(*", "choice", "WallRadius -1", "panels-layers-neither"),
        Taken("Lamination.Compare(*", "choice", "Rows [0] default", "a row at the edge"),
        // Kerfs
        Taken("new KerfedPanel(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("KerfBend.Plan(*", "panel", "DepthError default", "a stop that holds exactly"),
        Taken("KerfBend.Plan(*", "panel", "WebSheet Thickness *|WebSheet PublishedRadius *|WebSheet Name *", "the web has its own thickness; a name is for messages"),
        // Plywood by its plies
        Taken("new Veneer(*|new PlyLayUp(*", "*", "*", "stored unchecked: the calculator checks it"),
        Taken("LayeredPly.InBending(*", "layUp", "CrossRatio 0", "plies across count nothing"),
        Taken("LayUpBending.ToSheet(*", "name", "empty|100,000 brackets", "a name is the caller's"),
    ];

    /// <summary>Taken, and harmless when read.</summary>
    private static Rule Taken(string methods, string parameters, string hostiles, string why) => new(methods, parameters, hostiles, why);

    /// <summary>Taken, with a finding that says what is wrong with the design.</summary>
    private static Rule Found(string methods, string parameters, string hostiles, string code) => new(methods, parameters, hostiles, "a design, not an input, that is impossible", code);

    /// <summary>Taken into a list that the host makes for itself; reading it is as good as the list.</summary>
    private static Rule Stored(string methods, string parameters, string hostiles, string why) => new(methods, parameters, hostiles, why) { IsStoredAsGiven = true };

    /// <summary>The rule after all, before a wider exception.</summary>
    private static Rule Refused(string methods, string parameters, string hostiles) => new(methods, parameters, hostiles, "the rule") { IsDefault = true };

    /// <summary>Refused, but it is another parameter that does not fit the good value of the first.</summary>
    private static Rule RefusedAt(string path, string methods, string parameters, string hostiles) => new(methods, parameters, hostiles, "named is what does not fit to it") { IsDefault = true, Path = path };

    internal sealed class Rule(string methods, string parameters, string hostiles, string why, string? code = null)
    {
        private readonly Regex _methods = Pattern(methods), _parameters = Pattern(parameters), _hostiles = Pattern(hostiles);

        internal string? Code => code;

        internal bool IsStoredAsGiven { get; init; }

        internal bool IsDefault { get; init; }

        internal string? Path { get; init; }

        internal bool Covers(string method, string parameter, string hostile) => _methods.IsMatch(method) && _parameters.IsMatch(parameter) && _hostiles.IsMatch(hostile);

        public override string ToString() => $"{methods} | {parameters} | {hostiles}: {(code is null ? "accepted" : "finding:" + code)} ({why})";

        private static Regex Pattern(string text) =>
            new("^(" + string.Join('|', Array.ConvertAll(text.Split('|'), static part => Regex.Escape(part).Replace("\\*", ".*", StringComparison.Ordinal))) + ")$", RegexOptions.CultureInvariant | RegexOptions.Singleline);
    }
}
