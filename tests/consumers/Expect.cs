using System;
using System.Globalization;

namespace FinishKit.Consumers
{
    /// <summary>Compares numbers, prints each, and knows the exit code. C# 7.3, since the .NET Framework consumer compiles it too.</summary>
    internal static class Expect
    {
        private static int s_checks;
        private static int s_failures;

        internal static void Near(string what, double expected, double actual, double tolerance)
        {
            // Written so that NaN fails.
            bool holds = Math.Abs(expected - actual) <= tolerance;
            Report(holds, what, expected.ToString("R", CultureInfo.InvariantCulture), actual.ToString("R", CultureInfo.InvariantCulture));
        }

        internal static void Same(string what, string expected, string actual)
        {
            Report(string.Equals(expected, actual, StringComparison.Ordinal), what, expected, actual);
        }

        internal static void True(string what, bool holds)
        {
            Report(holds, what, "true", holds ? "true" : "false");
        }

        /// <summary>0 where every check held and there was one; else 1.</summary>
        internal static int ExitCode()
        {
            Console.WriteLine(s_checks + " checks, " + s_failures + " wrong");
            return s_checks > 0 && s_failures == 0 ? 0 : 1;
        }

        private static void Report(bool holds, string what, string expected, string actual)
        {
            s_checks++;
            if (!holds)
            {
                s_failures++;
            }

            Console.WriteLine((holds ? "  ok    " : "  WRONG ") + what + ": " + actual + (holds ? "" : ", expected " + expected));
        }
    }
}
