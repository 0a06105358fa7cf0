using UnitsNet;

namespace FinishKit;

/// <summary>A straight band of a measured wall: what <see cref="ProfileBreaks"/> finds between two breaks.</summary>
public sealed class ProfileBand
{
    internal ProfileBand(ProfileLine line, double girthFrom, double girthTo)
    {
        Line = line;
        FirstStation = line.First;
        LastStation = line.Last;
        FromHeight = Door.Millimetres(line.FromHeight);
        ToHeight = Door.Millimetres(line.ToHeight);
        Lean = Door.Radians(line.Lean);
        OffsetAtFoot = Door.Millimetres(Grid.Snap(line.Foot));
        OffsetAtHead = Door.Millimetres(Grid.Snap(line.Head));
        RootMeanSquare = Door.Millimetres(Grid.Snap(line.RootMeanSquare));
        GreatestResidual = Door.Millimetres(Grid.Snap(line.GreatestResidual));
        FarthestStation = line.Farthest;
        GirthFrom = Door.Millimetres(Grid.Snap(girthFrom));
        Girth = Door.Millimetres(Grid.Snap(girthTo - girthFrom));
    }

    /// <summary>Its first station, counted from 0; shared with the band below.</summary>
    public int FirstStation { get; }

    /// <summary>Its last station; shared with the band above.</summary>
    public int LastStation { get; }

    /// <summary>How many stations it has, both ends counted.</summary>
    public int Stations => LastStation - FirstStation + 1;

    /// <summary>Height of its foot.</summary>
    public Length FromHeight { get; }

    /// <summary>Height of its head.</summary>
    public Length ToHeight { get; }

    /// <summary>Its lean from plumb, positive where the wall comes toward the room going up.</summary>
    public Angle Lean { get; }

    /// <summary>Offset of its line at its foot, outward from the plumb line.</summary>
    public Length OffsetAtFoot { get; }

    /// <summary>Offset of its line at its head.</summary>
    public Length OffsetAtHead { get; }

    /// <summary>Root of the mean squared residual of its stations, divisor their number.</summary>
    public Length RootMeanSquare { get; }

    /// <summary>The residual greatest in size: positive where that station lies farther from the room than the line.</summary>
    public Length GreatestResidual { get; }

    /// <summary>The station it belongs to; the first of equals.</summary>
    public int FarthestStation { get; }

    /// <summary>Girth from the foot of the wall to its foot, from station to station.</summary>
    public Length GirthFrom { get; }

    /// <summary>Its own girth, from station to station.</summary>
    public Length Girth { get; }

    internal ProfileLine Line { get; }

    /// <summary>Heights and lean, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Print.Number(Line.FromHeight)} to {Print.Mm(Line.ToHeight)}, lean {Print.Round(Line.LeanDegrees, 2)}°";
}
