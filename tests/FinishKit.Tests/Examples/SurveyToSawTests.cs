using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using Xunit;
using static FinishKit.Measure;

namespace FinishKit.Tests.Examples;

/// <summary>The page docs/survey-to-saw.md: its code is compiled and its figures are the real ones.</summary>
public sealed class SurveyToSawTests
{
    [Fact]
    public void The_page_shows_this_code_and_its_figures_are_right()
    {
        #region page: survey to saw
        // The board: what the year does to it, and what it covers with the gap that asks for, rounded up to 0.1 mm.
        double fitted = EquilibriumMoisture.InAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(50)).MoistureContent;
        DimensionalChangeCoefficient pine = DimensionalChange.OfWood(WoodSpecies.Named("ponderosa pine"));
        SeasonMovement asked = BoardMovement.OverSeason(new BoardMovementJob(BoardCover.TongueAndGroove(Mm(97), Mm(9), Mm(1)), pine) { FittingMoisture = fitted });
        BoardCover board = BoardCover.TongueAndGroove(Mm(97), Mm(9), Mm(Math.Ceiling(asked.GapToLeave.Millimeters * 10) / 10));
        SeasonMovement year = BoardMovement.OverSeason(new BoardMovementJob(board, pine) { FittingMoisture = fitted });

        // The wall: a plumb line outward at seven heights, its bands and breaks, and the courses.
        WallProfile wall = ProfileBreaks.Find(
            [new(Mm(860), Mm(193)), new(Mm(960), Mm(190)), new(Mm(1060), Mm(186)), new(Mm(1280), Mm(165)), new(Mm(1500), Mm(144)), new(Mm(1670), Mm(98)), new(Mm(1840), Mm(53))]);
        CoursePlan courses = CourseLayout.LayOut(new CourseFace(Mm(3400), wall.Girth, board)
        {
            Breaks = [.. wall.Breaks.Select(at => new FaceBreak(at.Girth, at.LeanChange))],
        });

        // The rear edge through its marks, and the end of every course on it.
        MeasuredEdge rear = EdgeCurve.Through([new(Mm(0), Mm(3400)), new(Mm(400), Mm(3392)), new(Mm(800), Mm(3369)), new(Mm(1000), Mm(3351))]);
        EndCutSchedule ends = EndCuts.Schedule(new EndCutJob(rear, courses.LinesAtRear, datum: Mm(0)) { HiddenWidth = board.StillCovered });

        // Joints on strips, boards to buy, and what is cut from each; at both ends of a course the gap is left that the year asks for.
        JointJob job = new(courses.Runs(ends), [Mm(950), Mm(1420), Mm(1690), Mm(1960), Mm(2330)], [new StockBoard(Mm(2438), 9.80m)]) { EndGap = year.EndGap };
        JointLayout saw = BoardJoints.Choose(job);
        #endregion

        string[] blocks = Repository.Read("docs", "survey-to-saw.md").Split("```");
        string code = Assert.Single(blocks, static block => block.StartsWith("csharp\n", StringComparison.Ordinal));
        Assert.Equal(Lines(code["csharp\n".Length..].Split('\n')), Lines(Repository.Read("tests", "FinishKit.Tests", "Examples", "SurveyToSawTests.cs").Split('\n')
            .SkipWhile(static line => !line.Contains("#region page: survey to saw", StringComparison.Ordinal)).Skip(1).TakeWhile(static line => line.Trim() != "#endregion")));

        // Worked by hand: face 97 - 9 = 88, closes by 88 x 0.00216 x (16 - 9.271) = 1.279; girths sqrt(200² + 7²) etc. = 994. 642/89.3 = 7.2: 8 courses.
        // 352: four courses leave no sliver where the first joint is 352 - 3 x 89.3 = 84.1 to 89.3 + 1.3 = 90.6 above the break: 6.5, room for an error of 3 either way (a gap of 1 has 5: five courses).
        Assert.Equal(1.279, asked.GapToLeave.Millimeters, 0.002);

        // 1.3 left is 0.021 when wet; a joint every 88 + 1.3. With the 1 that was guessed the joints would close.
        Assert.Equal((1.3, 89.3), (board.Gap.Millimeters, board.Cover.Millimeters));
        Assert.Equal(0.021, year.GapWhenWet.Millimeters, 0.002);
        Assert.Contains(asked.Findings, static finding => finding.Code == "boards-movement-joint-closes");
        Assert.DoesNotContain(year.Findings, static finding => finding.Code == "boards-movement-joint-closes");
        Assert.Equal([200.1, 642.1], wall.Breaks.Select(static at => Math.Round(at.Girth.Millimeters, 1)));
        Assert.Equal((2, 12), (courses.Bands.Count, courses.Courses.Count));
        Assert.Equal(12, ends.Courses.Count);
        Assert.All(ends.Courses, static end => Assert.InRange(end.SawAngle.Degrees, -6, 0));
        Assert.True(saw.Proven && saw.LeastCost == saw.Cost && !saw.HasProblem);
        Assert.Equal(saw.Cutting.Boards.Count * 9.80m, saw.Cost);
        string page = string.Join(" ", Lines(Repository.Read("docs", "survey-to-saw.md").Split('\n')));
        Assert.Contains($"{courses.Courses.Count} courses in {courses.Bands.Count} bands", page, StringComparison.Ordinal);
        Assert.Contains($"{saw.Cutting.Boards.Count} boards", page, StringComparison.Ordinal);
        Assert.Contains("1.28 mm are asked", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_calculator_the_page_names_exists_and_every_page_it_links_is_there()
    {
        string page = Repository.Read("docs", "survey-to-saw.md");
        string[] named = [.. page.Split('`').Where(static (_, i) => i % 2 == 1).Where(static word => word.Length > 0 && char.IsUpper(word[0]) && word.All(static c => char.IsLetterOrDigit(c) || c == '.'))];
        Assert.True(named.Length > 10);
        HashSet<string> known = [.. typeof(BoardCover).Assembly.GetExportedTypes().SelectMany(static type => type.GetMembers().Select(member => type.Name + "." + member.Name).Append(type.Name))];
        Assert.All(named, name => Assert.Contains(name, known));
        string[] links = [.. page.Split("](").Skip(1).Select(static rest => rest.Split(')')[0])];
        Assert.True(links.Length > 8);
        Assert.All(links, static link => Assert.NotEmpty(Repository.Read(["docs", .. link.Split('/')])));
    }

    private static IEnumerable<string> Lines(IEnumerable<string> lines) => lines.Select(static line => line.Trim()).Where(static line => line.Length > 0);
}
