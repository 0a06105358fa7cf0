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
            if (Furring(job, stack, named) is { } furring)
            {
                remedies.Add(furring);
            }

            if (DriveAngle(stack, named) is { Outcome.MayBeDriven: true } lean)
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

    /// <summary>The thinnest furring at which the length is safe and bites.</summary>
    internal static FurringRemedy? Furring(FastenerJob job, StackNumbers stack, TolerancedLength fastener)
    {
        int furring = stack.Furring;
        if (furring < 0)
        {
            return null;
        }

        TolerancedLength.Span given = stack.Through[furring];
        double safe = Grid.SnapUp(given.Nominal + Math.Max(stack.Required, Allowed.OneStep) - Door.Millimetres(FastenerLength.Try(stack, fastener).WorstClearance));

        // Furring cannot be thinner than its own lower deviation lets it.
        double least = Math.Max(safe, Grid.SnapUp(Allowed.OneStep - Math.Min(0, given.Lower)));
        if (least > FastenerLength.Thicknesses.Most || At(FastenerLength.Thicknesses.Most).Hold != BiteVerdict.Bites)
        {
            return null;
        }

        // The bite never falls as the furring grows: halve the range on the grid until one step is left.
        double tooThin = least - Allowed.OneStep, enough = At(least).Hold == BiteVerdict.Bites ? least : FastenerLength.Thicknesses.Most;
        while (enough > least && Grid.Snap(enough - tooThin) > Allowed.OneStep)
        {
            double middle = Grid.Snap((tooThin + enough) / 2);
            (tooThin, enough) = At(middle).Hold == BiteVerdict.Bites ? (tooThin, middle) : (middle, enough);
        }

        SheetGoods? thinnest = null;
        FastenerCandidate? withSheet = null;
        foreach (SheetGoods sheet in SheetsFor(job, furring))
        {
            FastenerCandidate candidate = FastenerLength.Try(stack.WithFurring(sheet.Thickness.Read(new Name(nameof(sheet)), FastenerLength.Thicknesses, null)), fastener);
            if (candidate is { Tip: TipVerdict.Safe, Hold: BiteVerdict.Bites } && (thinnest is null || Door.Millimetres(sheet.Thickness.Nominal) < Door.Millimetres(thinnest.Thickness.Nominal)))
            {
                thinnest = sheet;
                withSheet = candidate;
            }
        }

        return new FurringRemedy(fastener.Nominal, Door.Millimetres(enough), thinnest, withSheet ?? At(enough));

        FastenerCandidate At(double thickness) => FastenerLength.Try(stack.WithFurring(new TolerancedLength.Span(thickness, given.Lower, given.Upper, given.Scope)), fastener);
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

    /// <summary>Toward the metal of a rib only: the tip moves to the side, and elsewhere nobody measured what is there.</summary>
    internal static DriveAngleRemedy? DriveAngle(StackNumbers stack, TolerancedLength fastener)
    {
        double longest = fastener.Read(new Name(nameof(fastener)), FastenerLength.Fasteners, null).Greatest;

        // On the grid, so that room for exactly half the length is 60° and not a rounding error past it.
        double cosine = Grid.Snap(stack.LeastDepth - stack.SetDepth.Greatest - Math.Max(stack.Required, Allowed.OneStep)) / longest;
        if (cosine < 0.5 || stack.Behind != BehindKind.RibMetal)
        {
            return null;
        }

        // Up to the next millionth of a degree, so that the worst case at that angle does keep the clearance.
        double least = cosine >= 1 ? 0 : Math.Min(60, Math.Ceiling(Math.Acos(cosine) * (180 / Math.PI) * 1e6) / 1e6);
        double degrees = Math.Ceiling(least);
        FastenerCandidate outcome = FastenerLength.Try(stack.WithAngle(degrees * (Math.PI / 180)), fastener);
        return new DriveAngleRemedy(fastener.Nominal, Angle.FromDegrees(least), Angle.FromDegrees(degrees), outcome);
    }

    /// <summary>The next thinner series of the same kind that has a length both safe and biting. Headless pins stand in for headless pins only.</summary>
    private static SeriesRemedy? OtherSeries(FastenerJob job, StackNumbers stack)
    {
        SeriesRemedy? best = null;
        double thickest = 0;
        foreach (FastenerSeries series in job.OtherSeries ?? FastenerSeries.All)
        {
            double shank = Door.Millimetres(series.Shank);
            if (series.Kind != job.Series.Kind || shank >= stack.Shank || shank <= thickest || (series.IsHeadless && !job.Series.IsHeadless))
            {
                continue;
            }

            StackNumbers other = StackNumbers.Read(job with { Series = series }, nameof(job), null)!;
            if (FastenerLength.Pick(FastenerLength.TryAll(other, series), TipVerdict.Safe, job.Preference) is { } candidate)
            {
                thickest = shank;
                best = new SeriesRemedy(candidate.Length.Nominal, series, candidate);
            }
        }

        return best;
    }
}
