using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>Boards over the seasons: what <see cref="BoardMovement.OverSeason(BoardMovementJob)"/> answers.</summary>
public sealed class SeasonMovement
{
    private readonly SeasonCase _case;
    private readonly SeasonNumbers _numbers;

    internal SeasonMovement(BoardMovementJob job, in SeasonCase season)
    {
        Job = job;
        _case = season;
        _numbers = BoardMovement.Solve(season, default(Silent));
        Findings = Finding.GravestFirst(Find());
    }

    /// <summary>What was asked.</summary>
    public BoardMovementJob Job { get; }

    /// <summary>Moisture content when fitted, in percent.</summary>
    public double FittingMoisture => _case.Fitting;

    /// <summary>Moisture content at the dry end of the season, in percent.</summary>
    public double DriestMoisture => _case.Driest;

    /// <summary>Moisture content at the wet end of the season, in percent.</summary>
    public double WettestMoisture => _case.Wettest;

    /// <summary>What the whole width of one board gains from fitting to the wet end; negative where it was fitted wetter.</summary>
    public Length Swelling => Door.Millimetres(Grid.Snap(_numbers.Swelling));

    /// <summary>What the whole width of one board loses from fitting to the dry end; negative where it was fitted drier.</summary>
    public Length Shrinkage => Door.Millimetres(Grid.Snap(_numbers.Shrinkage));

    /// <summary>The gap to leave at each joint when fitting: the greater of the least gap and what the joint closes toward the wet end; rounded up to the 1 nm grid.</summary>
    public Length GapToLeave => Door.Millimetres(LeaveMm);

    /// <summary>The gap to leave at each end of a board.</summary>
    public Length EndGap => Door.Millimetres(_case.EndGap);

    /// <summary>What is left of the gap at the wet end, with the gap as the board has it; negative where the boards press on each other.</summary>
    public Length GapWhenWet => Door.Millimetres(WetMm);

    /// <summary>How wide the gap is at the dry end, with the gap as the board has it.</summary>
    public Length GapWhenDry => Door.Millimetres(Grid.Snap(_numbers.GapWhenDry));

    /// <summary>How much of tongue or lap is still covered at the dry end, with the gap as the board has it; negative where it shows. Null of square-edged boards.</summary>
    public Length? StillCoveredWhenDry => _case.Hidden > 0 ? Door.Millimetres(CoveredMm) : null;

    /// <summary>What the faces of all boards together gain from fitting to the wet end: what a wall of boards pushed tight would have to give.</summary>
    public Length TotalSwelling => Door.Millimetres(Grid.Snap(_numbers.TotalSwelling));

    /// <summary>What the faces of all boards together lose from fitting to the dry end: what would open in one place if all moved from the other end.</summary>
    public Length TotalShrinkage => Door.Millimetres(Grid.Snap(_numbers.TotalShrinkage));

    /// <summary>The driest the boards may be when fitted, in percent: drier, the gap that the board has closes at the wet end. Null where any moisture will do.</summary>
    public double? DriestFitting => FaceRate > 0 && _case.Wettest - (_case.Gap / FaceRate) is > 0 and var driest ? driest : null;

    /// <summary>The wettest the boards may be when fitted, in percent, up to 30: wetter, too little of tongue or lap stays covered at the dry end. Null of square-edged boards, and where any moisture will do. Below the dry end where no moisture of the season will.</summary>
    public double? WettestFitting => _case.Hidden > 0 && WidthRate > 0 && _case.Driest + ((_case.Hidden - _case.Gap - _case.LeastCovered) / WidthRate) is < 30 and var wettest ? wettest : null;

    /// <summary>What a person should know, those of the coefficient too, gravest first.</summary>
    /// <remarks>
    /// Codes: <c>boards-movement-tongue-out</c>, <c>boards-movement-joint-closes</c>, <c>boards-movement-fitted-outside-season</c>, <c>boards-movement-outside-range</c>,
    /// <c>boards-movement-cups</c>, <c>boards-movement-ends</c>, and those of <see cref="DimensionalChangeCoefficient.Findings"/>.
    /// </remarks>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether a finding is a <see cref="Severity.Problem"/>.</summary>
    public bool HasProblem => Findings.Count > 0 && Findings[0].Severity >= Severity.Problem;

    /// <summary>The defaults taken because the caller gave no figure of their own, those of the coefficient too.</summary>
    public IReadOnlyList<DefaultUsed> DefaultsUsed
    {
        get
        {
            List<DefaultUsed> used = [];
            Add(_case.FittingIsDefault, "fitting-moisture", _case.Fitting, "%", MovementDefaults.Fitting);
            Add(_case.DriestIsDefault, "driest-moisture", _case.Driest, "%", MovementDefaults.Season);
            Add(_case.WettestIsDefault, "wettest-moisture", _case.Wettest, "%", MovementDefaults.Season);
            Add(_case.LeastGapIsDefault, "least-gap", _case.LeastGap, "mm", MovementDefaults.Gap);
            Add(_case.EndGapIsDefault, "end-gap", _case.EndGap, "mm", MovementDefaults.Ends);
            return [.. used, .. Job.Coefficient.DefaultsUsed];

            void Add(bool isDefault, string name, double value, string unit, Source source)
            {
                if (isDefault)
                {
                    used.Add(new DefaultUsed(new Figure(name, value, unit), source));
                }
            }
        }
    }

    private double LeaveMm => Grid.SnapUp(_numbers.GapToLeave);

    private double WetMm => Grid.Snap(_numbers.GapWhenWet);

    private double CoveredMm => Grid.Snap(_numbers.Covered);

    private double WidthRate => _case.Width * _case.Coefficient.Value;

    private double FaceRate => (_case.Width - _case.Hidden) * _case.Coefficient.Value;

    /// <summary>How everything follows, step by step.</summary>
    /// <returns>The workings.</returns>
    public Workings Explain()
    {
        Recorder recorder = new();
        BoardMovement.Solve(_case, recorder);
        return recorder.ToWorkings("Boards over the seasons");
    }

    /// <summary>The answer as flat figures.</summary>
    /// <returns>Moisture contents in percent, coefficient, swelling, shrinkage, gaps, what stays covered (absent of square-edged boards), boards and what they move together, and the range of moisture for fitting where it is limited.</returns>
    public IReadOnlyList<Figure> Figures()
    {
        List<Figure> figures =
        [
            new("fitting-moisture", _case.Fitting, "%"), new("driest-moisture", _case.Driest, "%"), new("wettest-moisture", _case.Wettest, "%"),
            new("coefficient", _case.Coefficient.Value, "1/%"),
            new("swelling", Grid.Snap(_numbers.Swelling), "mm"), new("shrinkage", Grid.Snap(_numbers.Shrinkage), "mm"),
            new("gap", _case.Gap, "mm"), new("gap-to-leave", LeaveMm, "mm"), new("end-gap", _case.EndGap, "mm"),
            new("gap-when-wet", WetMm, "mm"), new("gap-when-dry", Grid.Snap(_numbers.GapWhenDry), "mm"),
            new("boards", _case.Boards, string.Empty), new("total-swelling", Grid.Snap(_numbers.TotalSwelling), "mm"), new("total-shrinkage", Grid.Snap(_numbers.TotalShrinkage), "mm"),
        ];
        if (_case.Hidden > 0)
        {
            figures.Add(new Figure("still-covered-when-dry", CoveredMm, "mm"));
        }

        if (DriestFitting is { } driest)
        {
            figures.Add(new Figure("driest-fitting", driest, "%"));
        }

        if (WettestFitting is { } wettest)
        {
            figures.Add(new Figure("wettest-fitting", wettest, "%"));
        }

        return figures;
    }

    /// <summary>Board, movement and gap to leave, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Job.Board}: from {Print.Round(_case.Fitting, 3)}% it swells by {Print.Mm(_numbers.Swelling)} to {Print.Round(_case.Wettest, 3)}% and shrinks by {Print.Mm(_numbers.Shrinkage)} to {Print.Round(_case.Driest, 3)}%; leave {Print.MmUp(LeaveMm)} at each joint and {Print.Mm(_case.EndGap)} at each end";

    private List<Finding> Find()
    {
        List<Finding> findings = [];
        AddTongue(findings);
        if (WetMm < 0)
        {
            findings.Add(new Finding(
                "boards-movement-joint-closes",
                Severity.Caution,
                $"At {Print.Round(_case.Wettest, 3)}% the gap of {Print.Mm(_case.Gap)} is closed and neighbouring boards press on each other by {Print.Mm(-WetMm)}: leave {Print.MmUp(LeaveMm)}{(DriestFitting is { } driest && driest <= _case.Wettest ? $", or fit at {Print.Round(Math.Ceiling(driest * 10) / 10, 1)}% or more" : string.Empty)}.",
                [new("gap-when-wet", WetMm, "mm"), new("gap", _case.Gap, "mm"), new("gap-to-leave", LeaveMm, "mm"), new("wettest-moisture", _case.Wettest, "%")],
                MovementDefaults.Joint));
        }

        if (_case.Fitting < _case.Driest || _case.Fitting > _case.Wettest)
        {
            findings.Add(new Finding(
                "boards-movement-fitted-outside-season",
                Severity.Caution,
                $"Fitted at {Print.Round(_case.Fitting, 3)}%, the boards {(_case.Fitting < _case.Driest ? "will only swell" : "will only shrink")}: the season is {Print.Round(_case.Driest, 3)} to {Print.Round(_case.Wettest, 3)}%. Let them lie in the van's air before they are fitted.",
                [new("fitting-moisture", _case.Fitting, "%"), new("driest-moisture", _case.Driest, "%"), new("wettest-moisture", _case.Wettest, "%")],
                MovementDefaults.Season));
        }

        if (BoardMovement.OutsideRange(Math.Min(_case.Driest, _case.Fitting), Math.Max(_case.Wettest, _case.Fitting)) is { } outside)
        {
            findings.Add(outside);
        }

        if (Job.Coefficient.Grain != WoodGrain.Radial && _case.Coefficient.Value > 0)
        {
            findings.Add(new Finding(
                "boards-movement-cups",
                Severity.Note,
                $"A flat-sawn board of {Print.Mm(_case.Width)} cups as it moves: drying, it turns hollow on the side that was nearer the bark; two fixings across a wide board, and the same paint on its back, keep it flatter.",
                [new("width", _case.Width, "mm")],
                MovementDefaults.Cupping));
        }

        findings.Add(new Finding(
            "boards-movement-ends",
            Severity.Note,
            $"Leave {Print.Mm(_case.EndGap)} at each end of a board: along the grain the steel grows with heat while the wood dries. Cover the ends with a trim, or fill them with a bead that stays elastic.",
            [new("end-gap", _case.EndGap, "mm")],
            _case.EndGapIsDefault ? MovementDefaults.Ends : Sources.Given));
        findings.AddRange(Job.Coefficient.Findings);
        return findings;
    }

    private void AddTongue(List<Finding> findings)
    {
        if (_case.Hidden == 0 || (CoveredMm > 0 && CoveredMm >= _case.LeastCovered))
        {
            return;
        }

        string what = CoveredMm <= 0
            ? $"tongue or lap of {Print.Mm(_case.Hidden)} comes out: {Print.Mm(-CoveredMm)} of the joint is open to what is behind"
            : $"{Print.Mm(CoveredMm)} of tongue or lap stays covered, less than the {Print.Mm(_case.LeastCovered)} asked";
        findings.Add(new Finding(
            "boards-movement-tongue-out",
            Severity.Problem,
            $"At {Print.Round(_case.Driest, 3)}% {what}: take narrower boards, a deeper tongue or lap, a smaller gap, or boards that are drier when fitted.",
            [new("still-covered-when-dry", CoveredMm, "mm"), new("least-covered", _case.LeastCovered, "mm"), new("tongue-or-lap", _case.Hidden, "mm"), new("gap", _case.Gap, "mm"), new("driest-moisture", _case.Driest, "%")],
            MovementDefaults.Joint));
    }
}
