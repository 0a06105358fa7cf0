using UnitsNet;

namespace FinishKit;

/// <summary>Where one band of a measured wall ends and the next begins.</summary>
public sealed class ProfileBreak
{
    internal ProfileBreak(ProfileLine below, ProfileLine above, double girth, double nearestStations)
    {
        Station = above.First;
        Height = Door.Millimetres(above.FromHeight);
        Girth = Door.Millimetres(Grid.Snap(girth));
        Change = above.LeanDegrees - below.LeanDegrees;
        Gap = above.Foot - below.Head;
        Within = nearestStations;

        // Below: head + b1 (h - H); above: foot + b2 (h - H). They meet where the mismatch is made up.
        double turn = above.Slope - below.Slope, meet = above.FromHeight - (Gap / turn);
        MeetsAt = turn != 0 && meet >= below.FromHeight && meet <= above.ToHeight ? meet : double.NaN;
    }

    /// <summary>The station it lies at, counted from 0.</summary>
    public int Station { get; }

    /// <summary>Height of that station.</summary>
    public Length Height { get; }

    /// <summary>Girth up to there, from station to station.</summary>
    public Length Girth { get; }

    /// <summary>Lean above less lean below: positive where the wall turns in toward the room.</summary>
    public Angle LeanChange => Door.Radians(Change * (System.Math.PI / 180));

    /// <summary>How far the two lines miss each other at that height: offset of the line above less that of the line below.</summary>
    public Length Mismatch => Door.Millimetres(Grid.Snap(Gap));

    /// <summary>The height at which the two lines meet, which may be a better place for the break than the station; null where they do not meet within the two bands.</summary>
    public Length? LinesMeetAt => double.IsNaN(MeetsAt) ? null : Door.Millimetres(Grid.Snap(MeetsAt));

    internal double Change { get; }

    internal double Gap { get; }

    /// <summary>The greater distance to a neighbouring station: the break may really lie that far off.</summary>
    internal double Within { get; }

    private double MeetsAt { get; }

    /// <summary>Height, change and mismatch, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"at {Print.Mm(Door.Millimetres(Height))}: {Print.Round(Change, 2)}°, mismatch {Print.Mm(Gap)}";
}
