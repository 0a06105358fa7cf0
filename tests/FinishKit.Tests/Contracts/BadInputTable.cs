using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using Xunit;

namespace FinishKit.Tests.Contracts;

/// <summary>
/// Every public method, constructor and operator that takes arguments, every parameter, every hostile value of its type, the
/// other arguments good. The rule: an exception of the <see cref="ArgumentException"/> family that names the parameter by its
/// path. What is otherwise is written down in <see cref="BadInputRules"/>, by hand and with its reason.
/// </summary>
public sealed class BadInputTable
{
    /// <summary>Check methods that are not found by their name.</summary>
    private static readonly Dictionary<string, string> s_checks = new(StringComparer.Ordinal)
    {
        ["FastenerLength.Choose(IReadOnlyList<Layer> layers, Behind behind, FastenerSeries series)"] = "FastenerLength.Check(IReadOnlyList<Layer> layers, Behind behind, FastenerSeries series)",
        ["FastenerLength.Choose(FastenerJob job)"] = "FastenerLength.Check(FastenerJob job)",
        ["FastenerLength.LongestSafe(FastenerJob job)"] = "FastenerLength.Check(FastenerJob job)",
        ["FastenerLength.ThinnestFurring(FastenerJob job, Length fastener)"] = "FastenerLength.Check(FastenerJob job, Length fastener)",
        ["FastenerLength.LeastDriveAngle(FastenerJob job, Length fastener)"] = "FastenerLength.Check(FastenerJob job, Length fastener)",
        ["FastenerLength.Evaluate(FastenerJob job, Length fastener)"] = "FastenerLength.Check(FastenerJob job, Length fastener)",
        ["Measure.ParseLength(String text)"] = "Measure.CheckLength(String text)",
        ["CircleFit.Through(IReadOnlyList<MeasuredPoint> points)"] = "CircleFit.Check(IReadOnlyList<MeasuredPoint> points)",
        ["BentStrip.Judge(BentStripCase strip)"] = "BentStrip.Check(BentStripCase strip)",

        // Fixings into thin metal
        ["MetalScrew.Choose(MetalScrewJob job)"] = "MetalScrew.Check(MetalScrewJob job)",
        ["RivetNut.Fit(RivetNutJob job)"] = "RivetNut.Check(RivetNutJob job)",
        ["PanelFixings.Place(PanelFixingJob job)"] = "PanelFixings.Check(PanelFixingJob job)",
        ["PanelSplit.Split(PanelWall wall, IProgress<Double> progress, CancellationToken cancellation)"] = "PanelSplit.Check(PanelWall wall)",

        // Strips
        ["StripSpacing.Space(StripRun run)"] = "StripSpacing.Check(StripRun run)",
        ["StripSpacing.Space(Length runLength, IReadOnlyList<Length> fixedPositions, Length largestBay, IReadOnlyList<RibLine> ribs)"] = "StripSpacing.Check(Length runLength, IReadOnlyList<Length> fixedPositions, Length largestBay, IReadOnlyList<RibLine> ribs)",
        ["BoardCutting.Cut(CuttingJob job, IProgress<Double> progress, CancellationToken cancellation)"] = "BoardCutting.Check(CuttingJob job)",
        ["StripRipping.Rip(RippingJob job)"] = "StripRipping.Check(RippingJob job)",
        ["FurringLayout.LayOut(FurringFace face)"] = "FurringLayout.Check(FurringFace face)",
        ["BoardJoints.Choose(JointJob job, IProgress<Double> progress, CancellationToken cancellation)"] = "BoardJoints.Check(JointJob job)",
        ["CourseLayout.LayOut(CourseFace face)"] = "CourseLayout.Check(CourseFace face)",
        ["CourseBreaks.Judge(Length boardWidth, Angle leanChange, Angle? limit)"] = "CourseBreaks.Check(Length boardWidth, Angle leanChange, Angle? limit)",

        // Shape of the shell
        ["ProfileBreaks.Find(IReadOnlyList<MeasuredPoint> stations, Area? penalty, Int32? bands)"] = "ProfileBreaks.Check(IReadOnlyList<MeasuredPoint> stations, Area? penalty, Int32? bands)",
        ["SheetNesting.Nest(NestingJob job, IProgress<Double> progress, CancellationToken cancellation)"] = "SheetNesting.Check(NestingJob job)",
        ["RollCutting.Cut(RollJob job, IProgress<Double> progress, CancellationToken cancellation)"] = "RollCutting.Check(RollJob job)",
        ["EndCuts.Schedule(EndCutJob job)"] = "EndCuts.Check(EndCutJob job)",
    };

    private static readonly Dictionary<string, MethodBase> s_methods = PublicMembers.WithArguments.Where(static method => !IsCheck(method)).ToDictionary(PublicMembers.Name, StringComparer.Ordinal);

    public static TheoryData<string> Methods() => [.. s_methods.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Methods))]
    public void Good_values_are_taken(string name)
    {
        MethodBase method = s_methods[name];
        object?[] arguments = GoodArguments(method);
        Exception? thrown = Record.Exception(() => Invoke(method, arguments));
        Assert.True(thrown is null, $"{name} with the good values of GoodValues: {thrown?.Message}");
        if (CheckOf(method) is { } check)
        {
            Assert.Empty(Check(check, method, arguments));
        }
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Bad_input_does_what_the_table_says(string name)
    {
        MethodBase method = s_methods[name];
        string[] wrong = [.. RowsOf(method).Select(row => Deviation(method, row)).OfType<string>()];
        Assert.True(wrong.Length == 0, $"{wrong.Length} rows:\n" + string.Join("\n", wrong));
    }

    [Fact]
    public void Every_exception_from_the_rule_is_met()
    {
        Row[] rows = [.. s_methods.Values.SelectMany(RowsOf)];
        Assert.True(rows.Length > 1000, $"The table has {rows.Length} rows only.");
        BadInputRules.Rule[] stale = [.. BadInputRules.All.Except(rows.Select(static row => row.Rule).OfType<BadInputRules.Rule>())];
        Assert.True(stale.Length == 0, "No row is decided by:\n" + string.Join("\n", stale.Select(static rule => rule.ToString())));
    }

    [Fact]
    public void Every_calculation_has_a_check_and_every_check_belongs_to_one()
    {
        MethodInfo[] calculations = [.. PublicMembers.Calculations.Where(static method => method.GetParameters().Length > 0)];
        Assert.Empty(calculations.Where(static method => CheckOf(method) is null).Select(PublicMembers.Name));
        IEnumerable<string> used = s_methods.Values.Select(CheckOf).OfType<MethodInfo>().Select(PublicMembers.Name);
        Assert.Empty(PublicMembers.WithArguments.Where(IsCheck).Select(PublicMembers.Name).Except(used, StringComparer.Ordinal));
    }

    [Fact]
    public void The_table_sees_a_method_that_breaks_the_rule()
    {
        foreach ((string method, string expected) in new[]
        {
            (nameof(Fixture.Unchecked), "ought to be refused at 'value', was taken"),
            (nameof(Fixture.Misnamed), "ought to be refused at 'value', was refused at 'other'"),
            (nameof(Fixture.Careless), "InvalidOperationException came out"),
            (nameof(Fixture.Foreign), "no good value"),
        })
        {
            MethodBase fixture = typeof(Fixture).GetMethod(method, BindingFlags.Static | BindingFlags.NonPublic)!;
            string seen = method == nameof(Fixture.Foreign)
                ? Assert.Throws<InvalidOperationException>(() => GoodArguments(fixture)).Message
                : string.Join("\n", RowsOf(fixture).Select(row => Deviation(fixture, row)).OfType<string>());
            Assert.Contains(expected, seen, StringComparison.Ordinal);
        }
    }

    /// <summary>What the rows of a method throw, for the test of its documentation.</summary>
    internal static IReadOnlySet<Type> ThrownBy(MethodBase method)
    {
        HashSet<Type> types = [];
        foreach (Row row in RowsOf(method))
        {
            if (Record.Exception(() => Invoke(method, row.Arguments)) is { } thrown)
            {
                types.Add(thrown.GetType());
            }
        }

        return types;
    }

    /// <summary>The range that a Check method allows a parameter, as it words it; empty where no row says.</summary>
    internal static IEnumerable<string> AllowedBy(MethodBase method, ParameterInfo parameter) => CheckOf(method) is { } check
        ? RowsOf(method).Where(row => row.Parameter == parameter).SelectMany(row => Check(check, method, row.Arguments)).Where(problem => problem.Parameter == parameter.Name).Select(static problem => problem.Allowed).Distinct()
        : [];

    private static string? Deviation(MethodBase method, Row row)
    {
        object? result = null;
        Exception? thrown = Record.Exception(() => result = Invoke(method, row.Arguments));
        string? deviation = thrown switch
        {
            null => row.IsTaken ? FindingMissing(row.Rule?.Code, result) ?? Exercised(row, result) : $"ought to be refused at '{row.Path}', was taken",
            ArgumentException refused when !row.IsTaken => StartsWithPath(refused.ParamName, row.Path) ? null : $"ought to be refused at '{row.Path}', was refused at '{refused.ParamName}': {refused.Message}",
            ArgumentException refused => $"ought to be taken, was refused: {refused.Message}",
            _ => $"{thrown.GetType().Name} came out: {thrown.Message}",
        };
        deviation ??= CheckDeviation(method, row, thrown as ArgumentException);
        return deviation is null ? null : $"{PublicMembers.Name(method)} | {row.Parameter.Name} | {row.Hostile.Name}: {deviation}";
    }

    private static string? CheckDeviation(MethodBase method, Row row, ArgumentException? thrown)
    {
        if (CheckOf(method) is not { } check || check.GetParameters().All(parameter => parameter.Name != row.Parameter.Name))
        {
            return null;
        }

        IReadOnlyList<InputProblem> problems = [];
        if (Record.Exception(() => problems = Check(check, method, row.Arguments)) is { } escaped)
        {
            return $"the Check method threw {escaped.GetType().Name}: {escaped.Message}";
        }

        return (thrown, problems.Count) switch
        {
            (null, 0) => null,
            (null, _) => "the Check method reports what is taken: " + problems[0].Message,
            (_, 0) => "the Check method reports nothing",
            _ when problems[0].Parameter != thrown.ParamName => $"the Check method names '{problems[0].Parameter}' first, the exception '{thrown.ParamName}'",
            _ when problems[0].ToException().GetType() != thrown.GetType() => $"the first problem makes {problems[0].ToException().GetType().Name}, thrown was {thrown.GetType().Name}",
            _ when problems.Any(static problem => problem.Message.Length == 0 || problem.Allowed.Length == 0) => "a problem does not say what is allowed",
            _ => null,
        };
    }

    private static string? FindingMissing(string? code, object? result)
    {
        if (code is null)
        {
            return null;
        }

        var findings = (IReadOnlyList<Finding>)result!.GetType().GetProperty("Findings")!.GetValue(result)!;
        return findings.Any(finding => finding.Code == code) ? null : $"ought to carry the finding {code}, has {string.Join(", ", findings.Select(static finding => finding.Code))}";
    }

    /// <summary>What was taken must not do harm when it is read: printed, compared, hashed, explained.</summary>
    private static string? Exercised(Row row, object? result)
    {
        if (result is null || result.GetType().Assembly != PublicMembers.Library || row.Rule is { IsStoredAsGiven: true })
        {
            return null;
        }

        foreach (MethodInfo member in result.GetType().GetMethods(BindingFlags.Public | BindingFlags.Instance).Where(static member => member.GetParameters().Length == 0 && member.DeclaringType != typeof(object)))
        {
            if (Record.Exception(() => member.Invoke(result, BindingFlags.DoNotWrapExceptions, null, null, null)) is { } thrown and not ArgumentException)
            {
                return $"was taken, and then {member.Name} threw {thrown.GetType().Name}: {thrown.Message}";
            }
        }

        return null;
    }

    private static bool StartsWithPath(string? name, string path) =>
        name is not null && name.StartsWith(path, StringComparison.Ordinal) && (name.Length == path.Length || name[path.Length] is '.' or '[');

    private static IEnumerable<Row> RowsOf(MethodBase method)
    {
        foreach (ParameterInfo parameter in method.GetParameters().Where(static parameter => !parameter.IsOut))
        {
            foreach (Hostile hostile in HostileValues.Of(parameter))
            {
                object?[] arguments = GoodArguments(method);
                arguments[parameter.Position] = hostile.Value;
                BadInputRules.Rule? rule = BadInputRules.All.FirstOrDefault(rule => rule.Covers(PublicMembers.Name(method), parameter.Name!, hostile.Name));
                yield return new Row(parameter, hostile, arguments, rule);
            }
        }
    }

    private static object?[] GoodArguments(MethodBase method) =>
        [.. method.GetParameters().Select(parameter => parameter.IsOut ? null : GoodValues.Of(method, parameter))];

    private static object? Invoke(MethodBase method, object?[] arguments)
    {
        object?[] own = [.. arguments];
        return method is ConstructorInfo constructor
            ? constructor.Invoke(BindingFlags.DoNotWrapExceptions, null, own, null)
            : method.Invoke(GoodValues.Target(method), BindingFlags.DoNotWrapExceptions, null, own, null);
    }

    private static bool IsCheck(MethodBase method) => method is MethodInfo { IsStatic: true } info && PublicMembers.IsCheck(info);

    private static MethodInfo? CheckOf(MethodBase method)
    {
        IEnumerable<MethodInfo> checks = method.DeclaringType!.GetMethods(PublicMembers.Declared).Where(PublicMembers.IsCheck);
        if (s_checks.TryGetValue(PublicMembers.Name(method), out string? written))
        {
            return checks.Single(check => PublicMembers.Name(check) == written);
        }

        return checks.SingleOrDefault(check => check.Name == "Check" + method.Name
            && check.GetParameters().All(parameter => method.GetParameters().Any(own => own.Name == parameter.Name && own.ParameterType == parameter.ParameterType)));
    }

    private static IReadOnlyList<InputProblem> Check(MethodInfo check, MethodBase method, object?[] arguments) => (IReadOnlyList<InputProblem>)check.Invoke(
        null, BindingFlags.DoNotWrapExceptions, null, [.. check.GetParameters().Select(parameter => arguments[method.GetParameters().Single(own => own.Name == parameter.Name).Position])], null)!;

    private sealed record Row(ParameterInfo Parameter, Hostile Hostile, object?[] Arguments, BadInputRules.Rule? Rule)
    {
        /// <summary>A null where the type says that null may be; else what the rules say, else refused.</summary>
        internal bool IsTaken => Rule is null ? Hostile.MayBeNull : !Rule.IsDefault;

        internal string Path => Rule?.Path ?? Root + Hostile.Path;

        /// <summary>The parameter; of an init accessor the member.</summary>
        private string Root => Parameter.Member.Name.StartsWith("set_", StringComparison.Ordinal) ? Parameter.Member.Name["set_".Length..] : Parameter.Name!;
    }

    /// <summary>What a new public method must not do.</summary>
    private static class Fixture
    {
        internal static int Unchecked(int value) => value;

        internal static int Misnamed(int value) => value > 0 && value < 100 ? value : throw new InputProblem("other", "this", "that", isRange: true).ToException();

        internal static int Careless(double value) => double.IsNaN(value) ? throw new InvalidOperationException("NaN.") : 1;

        internal static int Foreign(Regex value) => value.ToString().Length;
    }
}
