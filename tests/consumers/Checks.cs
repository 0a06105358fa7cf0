using System;
using System.Collections.Generic;
using FinishKit;
using UnitsNet;

namespace FinishKit.Consumers
{
    /// <summary>
    /// The numbers that every consumer checks, written as a C# 7.3 host writes them: constructors and plain parameters.
    /// One method a calculator; a new calculator adds its own and calls it from <see cref="All"/>.
    /// </summary>
    internal static class Checks
    {
        internal static void All()
        {
            ArcFromChordAndRise();
            InputIsRefused();
            TolerancesAddUp();
        }

        private static void ArcFromChordAndRise()
        {
            // By hand: R = 300 * 300 / (8 * 2) + 2 / 2 = 5625 + 1 = 5626.
            CircularArc arc = Arc.FromChordAndRise(Measure.Mm(300), Measure.Mm(2));
            Expect.Near("radius of 300 mm with 2 mm under it, mm", 5626, arc.Radius.Value.Millimeters, 1e-6);

            // By hand: 12 in with 0.5 in, R = 12 * 12 / (8 * 0.5) + 0.25 = 36.25 in = 920.75 mm.
            CircularArc inches = Arc.FromChordAndRise(Length.FromInches(12), Length.FromInches(0.5));
            Expect.Near("radius of 12 in with 1/2 in under it, mm", 920.75, inches.Radius.Value.Millimeters, 1e-6);

            CircularArc flat = Arc.FromChordAndRise(Measure.Mm(300), Measure.Mm(0));
            Expect.True("a flat surface has no radius", !flat.Radius.HasValue);
            Expect.Same("a shallow reading is a finding", "geometry-radius-uncertain", arc.Findings.Count == 1 ? arc.Findings[0].Code : "none");
            Expect.True("the workings print the radius", arc.Explain().ToText().IndexOf("5626", StringComparison.Ordinal) >= 0);
        }

        private static void InputIsRefused()
        {
            IReadOnlyList<InputProblem> problems = Arc.CheckFromChordAndRise(Measure.Mm(-1), Measure.Mm(2));
            Expect.Same("Check names the parameter", "chord", problems.Count == 1 ? problems[0].Parameter : "none");
            string thrown = "nothing";
            try
            {
                Arc.FromChordAndRise(Measure.Mm(-1), Measure.Mm(2));
            }
            catch (ArgumentOutOfRangeException e)
            {
                thrown = e.ParamName;
            }

            Expect.Same("the method throws for it", "chord", thrown);
        }

        private static void TolerancesAddUp()
        {
            // By hand: 12.7 + 15 = 27.7; worst case 12.7 - 0.5 + 15 - 0.8 = 26.4.
            TolerancedSum sum = TolerancedLength.Sum(new[]
            {
                TolerancedLength.PlusMinus(Measure.Mm(12.7), Measure.Mm(0.5)),
                new TolerancedLength(Measure.Mm(15), Measure.Mm(-0.8), Measure.Mm(0.6)),
            });
            Expect.Near("nominal of two layers, mm", 27.7, sum.Nominal.Millimeters, 1e-6);
            Expect.Near("least of two layers, mm", 26.4, sum.WorstLeast.Millimeters, 1e-6);
        }
    }
}
