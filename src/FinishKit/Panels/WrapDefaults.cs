namespace FinishKit;

/// <summary>What a wrapped panel takes when the caller gives nothing, each with its basis, and what its sizes rest on.</summary>
internal static class WrapDefaults
{
    internal const double Foam = 3;
    internal const double TurnUnder = 35;
    internal const double Reveal = 1.5;
    internal const double SqueezedShare = 0.5;

    /// <summary>How far a cut in the cloth stops short of the ply's edge.</summary>
    internal const double CutStop = 3;

    /// <summary>Greatest distance of relief cuts round a corner.</summary>
    internal const double ReliefSpacing = 20;

    internal static readonly Source FoamSource = Source.CommonPractice("default-foam", "foam under cloth is 3 mm thick, 3 to 6");

    internal static readonly Source TurnUnderSource = Source.CommonPractice("default-turn-under", "35 mm of cloth are turned onto the back, 25 to 50");

    internal static readonly Source RevealSource = Source.CommonPractice("default-joint-reveal", "panels are 1.5 mm apart, 1 to 3");

    internal static readonly Source GapSource = Source.Judgement("default-wrap-gap", "at the edges of an opening as much is left as at a joint between wrapped panels, 1.5 mm");

    internal static readonly Source SqueezedSource = Source.Judgement("default-squeezed-foam", "foam that goes round an edge is squeezed to half its thickness, a third to two thirds");

    internal static readonly Source Sizes = Source.Derived("wrap-sizes", "Sizes of a wrapped panel", "cloth and squeezed foam at an edge make the panel larger than its ply; the cloth runs out over the squeezed foam, down foam and ply, back in under the squeezed foam and on by the turn-under");

    internal static readonly Source Cuts = Source.Derived("wrap-cuts", "Cuts in the cloth at corners", "on the line at 45 degrees through a corner: from the corner of the cloth to the ply's corner or to its round, less the stop");

    internal static readonly Source CutRule = Source.Judgement("wrap-cut-stop", "a cut in the cloth stops 3 mm short of the ply's edge, and round a corner of a window the cuts are at most 20 mm apart");

    internal static readonly Source Flammability = Source.Published("49-CFR-571-302", "Standard No. 302, Flammability of interior materials, 49 CFR 571.302", "National Highway Traffic Safety Administration", 2002, "S3.1 to S4.3", SourceReading.Copy, "text of 2002 as archived at webarchive.library.unt.edu; the limit of 102 mm a minute at burningtester.com and aeroblazelab.com");
}
