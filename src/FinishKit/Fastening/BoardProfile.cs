using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Where a fastener goes through a board.</summary>
public enum Nailing
{
    /// <summary>Through the face, the board's full thickness.</summary>
    Face = 0,

    /// <summary>Hidden: seated in the corner above the tongue. Driven at an angle it passes the tongue and then the board's back shoulder; driven straight, the tongue and then the void behind it.</summary>
    BlindThroughTongue = 1,

    /// <summary>Hidden: through the lower lip of a shiplap edge alone, which the next board covers.</summary>
    ThroughUnderLap = 2,

    /// <summary>Through the face at a shiplap joint: both lips.</summary>
    ThroughBothLaps = 3,
}

/// <summary>The cross-section of a board as far as a fastener cares: how thick it is at each place one may go through.</summary>
public sealed class BoardProfile
{
    private static readonly Allowed s_thickness = new(Allowed.OneStep, 200, "mm");

    private readonly TolerancedLength? _tongue, _shoulder, _overLap, _underLap;

    private BoardProfile(string name, TolerancedLength thickness, TolerancedLength? tongue, TolerancedLength? shoulder, TolerancedLength? overLap, TolerancedLength? underLap)
    {
        Name = name;
        Thickness = thickness;
        _tongue = tongue;
        _shoulder = shoulder;
        _overLap = overLap;
        _underLap = underLap;
    }

    /// <summary>What the profile is called.</summary>
    public string Name { get; }

    /// <summary>Thickness of the board.</summary>
    public TolerancedLength Thickness { get; }

    /// <summary>A square-edged board.</summary>
    /// <param name="thickness">Its thickness [length], more than 0 up to 200 mm.</param>
    /// <returns>The profile.</returns>
    /// <exception cref="ArgumentException">The thickness is outside its range or in an undefined unit.</exception>
    public static BoardProfile SquareEdged(TolerancedLength thickness)
    {
        thickness.Read(new Name(nameof(thickness)), s_thickness, null);
        return new BoardProfile("square-edged", thickness, null, null, null, null);
    }

    /// <summary>A tongue-and-groove board.</summary>
    /// <param name="thickness">Its thickness [length], more than 0 up to 200 mm.</param>
    /// <param name="tongue">Thickness of the tongue [length].</param>
    /// <param name="backShoulder">From the back of the tongue to the back of the board [length]; tongue and shoulder together less than the thickness.</param>
    /// <returns>The profile.</returns>
    /// <exception cref="ArgumentException">A length is outside its range or in an undefined unit.</exception>
    public static BoardProfile TongueAndGroove(TolerancedLength thickness, TolerancedLength tongue, TolerancedLength backShoulder)
    {
        double whole = thickness.Read(new Name(nameof(thickness)), s_thickness, null).Nominal;
        double part = tongue.Read(new Name(nameof(tongue)), s_thickness, null).Nominal;
        double shoulder = backShoulder.Read(new Name(nameof(backShoulder)), s_thickness, null).Nominal;
        Require(Grid.Snap(part + shoulder) < whole, nameof(backShoulder), shoulder, $"less than {Print.Number(Grid.Snap(whole - part))} mm, what the tongue leaves of the thickness");
        return new BoardProfile("tongue-and-groove", thickness, tongue, backShoulder, null, null);
    }

    /// <summary>A shiplap board.</summary>
    /// <param name="thickness">Its thickness [length], more than 0 up to 200 mm.</param>
    /// <param name="overLap">Thickness of the lip that shows [length].</param>
    /// <param name="underLap">Thickness of the lip that is covered [length]; both lips together not more than the thickness.</param>
    /// <returns>The profile.</returns>
    /// <exception cref="ArgumentException">A length is outside its range or in an undefined unit.</exception>
    public static BoardProfile Shiplap(TolerancedLength thickness, TolerancedLength overLap, TolerancedLength underLap)
    {
        double whole = thickness.Read(new Name(nameof(thickness)), s_thickness, null).Nominal;
        double over = overLap.Read(new Name(nameof(overLap)), s_thickness, null).Nominal;
        double under = underLap.Read(new Name(nameof(underLap)), s_thickness, null).Nominal;
        Require(Grid.Snap(over + under) <= whole, nameof(underLap), under, $"at most {Print.Number(Grid.Snap(whole - over))} mm, what the upper lip leaves of the thickness");
        return new BoardProfile("shiplap", thickness, null, null, overLap, underLap);
    }

    /// <summary>The layers a fastener passes in this board, outermost first, from the surface where its head seats.</summary>
    /// <param name="way">Where it goes through.</param>
    /// <param name="driveAngle">Angle from the face normal [angle], 0° to 60°; tells whether a nail through the tongue enters the shoulder or a void.</param>
    /// <returns>One or two layers; put what lies under the board after them.</returns>
    /// <exception cref="ArgumentException">The profile has no such place, or the angle is outside its range or in an undefined unit.</exception>
    /// <example><code>
    /// BoardProfile board = BoardProfile.TongueAndGroove(Mm(12.7), Mm(4), Mm(4));
    /// IReadOnlyList&lt;Layer&gt; layers = board.Layers(Nailing.BlindThroughTongue, Angle.FromDegrees(45)); // tongue 4 mm, shoulder 4 mm
    /// </code></example>
    public IReadOnlyList<Layer> Layers(Nailing way, Angle driveAngle)
    {
        double angle = Door.Radians(driveAngle, nameof(driveAngle), FastenerLength.DriveAngles, null);
        switch (way)
        {
            case Nailing.Face:
                return [Layer.Board(Thickness)];
            case Nailing.BlindThroughTongue when _tongue is { } tongue && _shoulder is { } shoulder:
                Layer first = new(tongue) { Name = "tongue" };
                return [first, angle > 0 ? new Layer(shoulder) { Name = "back shoulder" } : Layer.Void(shoulder)];
            case Nailing.ThroughUnderLap when _underLap is { } under:
                return [new Layer(under) { Name = "under lap" }];
            case Nailing.ThroughBothLaps when _overLap is { } over && _underLap is { } under:
                return [new Layer(over) { Name = "over lap" }, new Layer(under) { Name = "under lap" }];
            default:
                throw new InputProblem(nameof(way), way.ToString(), $"a way of nailing that a {Name} board has", isRange: false).ToException();
        }
    }

    /// <summary>Name and thickness, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name} board {Thickness}";

    private static void Require(bool holds, string parameter, double value, string allowed)
    {
        if (!holds)
        {
            throw new InputProblem(parameter, Print.Number(value) + " mm", allowed, isRange: true).ToException();
        }
    }
}
