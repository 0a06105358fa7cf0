using System;
using System.Collections.Generic;
using UnitsNet;

namespace FinishKit;

/// <summary>What would help where no stocked length is safe: thicker furring, driving at an angle, another series.</summary>
internal static class FastenerRemedies
{
    internal static List<Remedy> For(FastenerJob job, StackNumbers stack, FastenerCandidate? chosen)
    {
        List<Remedy> remedies = [];
        if (NamedLength(job, stack, chosen) is { } named)
        {
            if (Furring(job, stack, named) is { Outcome.Hold: BiteVerdict.Bites } furring)
            {
                remedies.Add(furring);
            }

            if (DriveAngle(stack, named) is { Outcome.Hold: BiteVerdict.Bites } lean)
            {
                remedies.Add(lean);
            }
        }

        if (OtherSeries(job, stack) is { } other)
        {
            remedies.Add(other);
        }

        return remedies;
    }

    /// <summary>The length worth making safe: the marginal one chosen; else the shortest that would hold if the furring were thick enough.</summary>
    private static TolerancedLength? NamedLength(FastenerJob job, StackNumbers stack, FastenerCandidate? chosen)
    {
        if (chosen is not null)
        {
            return chosen.Length;
        }

        if (stack.Furring < 0)
        {
            return null;
        }

        StackNumbers deep = stack.WithFurring(new TolerancedLength.Span(FastenerLength.Thicknesses.Most, 0, 0, DeviationScope.Batch));
        TolerancedLength? biting = null;
        foreach (FastenerCandidate candidate in FastenerLength.TryAll(deep, job.Series))
        {
            if (candidate.Hold == BiteVerdict.Bites)
            {
                if (candidate.ReachesTarget)
                {
                    return candidate.Length;
                }

                biting = candidate.Length;
            }
        }

        return biting;
    }

    internal static FurringRemedy? Furring(FastenerJob job, StackNumbers stack, TolerancedLength fastener)
    {
        int furring = stack.Furring;
        if (furring < 0)
        {
            return null;
        }

        TolerancedLength.Span given = stack.Through[furring];
        double least = Grid.SnapUp(given.Nominal + stack.Required - Door.Millimetres(FastenerLength.Try(stack, fastener).WorstClearance));
        if (least > FastenerLength.Thicknesses.Most)
        {
            return null;
        }

        // Furring cannot be thinner than its own lower deviation lets it.
        least = Math.Max(least, Grid.SnapUp(Allowed.OneStep - Math.Min(0, given.Lower)));
        SheetGoods? thinnest = null;
        FastenerCandidate? withSheet = null;
        foreach (SheetGoods sheet in SheetsFor(job, furring))
        {
            FastenerCandidate candidate = FastenerLength.Try(stack.WithFurring(sheet.Thickness.Read(new Name(nameof(sheet)), FastenerLength.Thicknesses, null)), fastener);
            if (candidate.Tip == TipVerdict.Safe && (thinnest is null || Door.Millimetres(sheet.Thickness.Nominal) < Door.Millimetres(thinnest.Thickness.Nominal)))
            {
                thinnest = sheet;
                withSheet = candidate;
            }
        }

        return new FurringRemedy(
            fastener.Nominal,
            Door.Millimetres(least),
            thinnest,
            withSheet ?? FastenerLength.Try(stack.WithFurring(new TolerancedLength.Span(least, given.Lower, given.Upper, given.Scope)), fastener));
    }

    private static IReadOnlyList<SheetGoods> SheetsFor(FastenerJob job, int furring)
    {
        if (job.Sheets is not null)
        {
            return job.Sheets;
        }

        List<SheetGoods> family = [];
        foreach (SheetGoods sheet in SheetGoods.All)
        {
            if (sheet.Family == job.Layers[furring].Sheet?.Family)
            {
                family.Add(sheet);
            }
        }

        return family.Count > 0 ? family : SheetGoods.Birch;
    }

    internal static DriveAngleRemedy? DriveAngle(StackNumbers stack, TolerancedLength fastener)
    {
        double longest = fastener.Read(new Name(nameof(fastener)), FastenerLength.Fasteners, null).Greatest;

        // On the grid, so that room for exactly half the length is 60° and not a rounding error past it.
        double cosine = Grid.Snap(stack.LeastDepth - stack.SetDepth.Greatest - stack.Required) / longest;
        if (cosine < 0.5)
        {
            return null;
        }

        // Up to the next millionth of a degree, so that the worst case at that angle does keep the clearance.
        double degrees = cosine >= 1 ? 0 : Math.Min(60, Math.Ceiling(Math.Acos(cosine) * (180 / Math.PI) * 1e6) / 1e6);
        double angle = degrees * (Math.PI / 180);
        return new DriveAngleRemedy(fastener.Nominal, Angle.FromDegrees(degrees), FastenerLength.Try(stack.WithAngle(angle), fastener));
    }

    /// <summary>The series nearest in shank that has a length both safe and biting.</summary>
    private static SeriesRemedy? OtherSeries(FastenerJob job, StackNumbers stack)
    {
        SeriesRemedy? best = null;
        double nearest = double.PositiveInfinity;
        foreach (FastenerSeries series in job.OtherSeries ?? FastenerSeries.Nails)
        {
            double distance = Math.Abs(Door.Millimetres(series.Shank) - stack.Shank);
            if (series.Name == job.Series.Name || distance >= nearest)
            {
                continue;
            }

            StackNumbers other = StackNumbers.Read(job with { Series = series }, nameof(job), null)!;
            if (FastenerLength.Pick(FastenerLength.TryAll(other, series), TipVerdict.Safe, job.Preference) is { } candidate)
            {
                nearest = distance;
                best = new SeriesRemedy(candidate.Length.Nominal, series, candidate);
            }
        }

        return best;
    }
}
