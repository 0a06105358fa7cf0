using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;

namespace FinishKit;

/// <summary>
/// Reads the source text of a formula (or its own printed text) and writes it with symbols, with the numbers put in, and as
/// TeX. It knows + - * /, parentheses, numbers, names, and the functions in <see cref="Functions"/>.
/// </summary>
internal sealed class FormulaText
{
    private const int MostCharacters = 1000;

    private static readonly Dictionary<string, string> Functions = new(StringComparer.Ordinal)
    {
        ["Math.Sqrt"] = "sqrt",
        ["Math.Pow"] = "pow",
        ["Math.Abs"] = "abs",
        ["Math.Min"] = "min",
        ["Math.Max"] = "max",
        ["Math.Sin"] = "sin",
        ["Math.Cos"] = "cos",
        ["Math.Tan"] = "tan",
        ["Math.Asin"] = "asin",
        ["Math.Acos"] = "acos",
        ["Math.Atan"] = "atan",
        ["Normal.Below"] = "Phi",
        ["Grid.CeilingOfRatio"] = "ceilratio",
        ["Math.PI"] = "pi",
    };

    private FormulaText(Node root, IReadOnlyList<Figure> inputs)
    {
        Inputs = inputs;
        Text = Write(root, 0, static name => name);
        Tex = WriteTex(root, 0, SymbolTex);
    }

    internal string Text { get; }

    internal string Tex { get; }

    /// <summary>Each symbol that occurs, once, with its number.</summary>
    internal IReadOnlyList<Figure> Inputs { get; }

    /// <summary>Reads C# source, replacing local names by their recorded symbols.</summary>
    internal static FormulaText Parse(string source, Dictionary<string, Figure> known)
    {
        List<Figure> inputs = [];
        Node root = new Reader(source).ReadAll(name =>
        {
            if (!known.TryGetValue(name, out Figure figure))
            {
                throw new InvalidOperationException($"The formula '{source}' uses '{name}', which is neither given nor a step.");
            }

            if (!inputs.Contains(figure))
            {
                inputs.Add(figure);
            }

            return figure.Name;
        });
        return new FormulaText(root, inputs);
    }

    /// <summary>Whether a printed formula can be read. Its length is limited, and with it how deep its brackets nest.</summary>
    internal static bool IsReadable(string text)
    {
        if (text.Length > MostCharacters)
        {
            return false;
        }

        try
        {
            new Reader(text).ReadAll(static name => name);
            return true;
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }

    /// <summary>A printed formula with numbers in place of its symbols.</summary>
    internal static string PutIn(string text, IReadOnlyList<Figure> inputs) =>
        Write(new Reader(text).ReadAll(static name => name), 0, name => NumberOf(name, inputs, Print.Number, static n => n));

    /// <summary>A printed formula with numbers in place of its symbols, as TeX.</summary>
    internal static string PutInTex(string text, IReadOnlyList<Figure> inputs) =>
        WriteTex(new Reader(text).ReadAll(static name => name), 0, name => NumberOf(name, inputs, NumberTex, SymbolTex));

    /// <summary>A number as TeX: <c>1.7E-12</c> as a power of ten.</summary>
    internal static string NumberTex(double value)
    {
        string[] parts = Print.Number(value).Split('E');
        return parts.Length == 1 ? parts[0] : parts[0] + " \\cdot 10^{" + int.Parse(parts[1], CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture) + "}";
    }

    /// <summary>A unit as TeX: powers raised.</summary>
    internal static string UnitTex(string unit)
    {
        StringBuilder tex = new();
        foreach (char c in unit)
        {
            if (char.IsDigit(c) && tex.Length > 0 && char.IsLetter(tex[tex.Length - 1]))
            {
                tex.Append('^');
            }

            // A bare percent sign begins a comment.
            tex.Append(c == '%' ? "\\%" : c.ToString());
        }

        return tex.ToString();
    }

    /// <summary>A symbol as TeX: Greek letters by name, an index as a subscript.</summary>
    internal static string SymbolTex(string symbol)
    {
        string[] parts = symbol.Split('_');
        StringBuilder tex = new(Greek(parts[0]));
        if (parts.Length > 1)
        {
            List<string> below = [];
            for (int i = 1; i < parts.Length; i++)
            {
                below.Add(parts[i].Length > 1 ? "\\mathrm{" + parts[i] + "}" : parts[i]);
            }

            tex.Append("_{").Append(string.Join(",", below)).Append('}');
        }

        return tex.ToString();
    }

    private static string Greek(string letter) => letter switch
    {
        "alpha" or "delta" or "theta" or "kappa" or "mu" or "pi" or "rho" or "sigma" or "phi" or "Phi" => "\\" + letter,
        _ => letter.Length > 1 ? "\\mathrm{" + letter + "}" : letter,
    };

    private static string NumberOf(string name, IReadOnlyList<Figure> inputs, Func<double, string> print, Func<string, string> otherwise)
    {
        foreach (Figure input in inputs)
        {
            if (input.Name == name)
            {
                string number = print(input.Value);
                return number[0] == '-' ? "(" + number + ")" : number;
            }
        }

        return otherwise(name);
    }

    private static string Write(Node node, int above, Func<string, string> name) => node switch
    {
        { Kind: Kind.Number } => node.Text,
        { Kind: Kind.Name } => name(node.Text),
        { Kind: Kind.Call, Text: "pow" } => Write(node.Parts[0], 4, name) + "^" + Write(node.Parts[1], 4, name),
        { Kind: Kind.Call } => node.Text + "(" + string.Join(", ", Array.ConvertAll(node.Parts, part => Write(part, 0, name))) + ")",
        { Kind: Kind.Minus } => Bracket("-" + Write(node.Parts[0], 3, name), above > 1),
        { Text: "*" or "/" } => Bracket(Write(node.Parts[0], 2, name) + " " + node.Text + " " + Write(node.Parts[1], 3, name), above > 2),
        _ => Bracket(Write(node.Parts[0], 1, name) + " " + node.Text + " " + Write(node.Parts[1], 2, name), above > 1),
    };

    private static string WriteTex(Node node, int above, Func<string, string> name) => node switch
    {
        { Kind: Kind.Number } => node.Text,
        { Kind: Kind.Name } => name(node.Text),
        { Kind: Kind.Call, Text: "pow" } => WriteTex(node.Parts[0], 4, name) + "^{" + WriteTex(node.Parts[1], 0, name) + "}",
        { Kind: Kind.Call, Text: "sqrt" } => "\\sqrt{" + WriteTex(node.Parts[0], 0, name) + "}",
        { Kind: Kind.Call, Text: "ceilratio" } => "\\left\\lceil\\frac{" + WriteTex(node.Parts[0], 0, name) + "}{" + WriteTex(node.Parts[1], 0, name) + "}\\right\\rceil",
        { Kind: Kind.Call } => FunctionTex(node.Text) + "\\left(" + string.Join(", ", Array.ConvertAll(node.Parts, part => WriteTex(part, 0, name))) + "\\right)",
        { Kind: Kind.Minus } => BracketTex("-" + WriteTex(node.Parts[0], 3, name), above > 1),
        { Text: "/" } => BracketTex("\\frac{" + WriteTex(node.Parts[0], 0, name) + "}{" + WriteTex(node.Parts[1], 0, name) + "}", above > 3),
        { Text: "*" } => BracketTex(WriteTex(node.Parts[0], 2, name) + " \\cdot " + WriteTex(node.Parts[1], 3, name), above > 3),
        _ => BracketTex(WriteTex(node.Parts[0], 1, name) + " " + node.Text + " " + WriteTex(node.Parts[1], 2, name), above > 1),
    };

    private static string FunctionTex(string function) => function switch
    {
        "asin" => "\\arcsin",
        "acos" => "\\arccos",
        "atan" => "\\arctan",
        "abs" => "\\operatorname{abs}",
        _ => "\\" + function,
    };

    private static string Bracket(string text, bool needed) => needed ? "(" + text + ")" : text;

    private static string BracketTex(string text, bool needed) => needed ? "\\left(" + text + "\\right)" : text;

    private enum Kind
    {
        Number,
        Name,
        Call,
        Minus,
        Binary,
    }

    private sealed class Node(Kind kind, string text, params Node[] parts)
    {
        internal Kind Kind { get; } = kind;

        internal string Text { get; } = text;

        internal Node[] Parts { get; } = parts;
    }

    private sealed class Reader(string text)
    {
        private int _at;

        internal Node ReadAll(Func<string, string> symbol)
        {
            Node node = Sum(symbol);
            Space();
            return _at == text.Length ? node : throw new InvalidOperationException($"The formula '{text}' cannot be read at {_at.ToString(CultureInfo.InvariantCulture)}.");
        }

        private Node Sum(Func<string, string> symbol)
        {
            Node left = Product(symbol);
            while (Peek('+') || Peek('-'))
            {
                string sign = TakeOne();
                left = new Node(Kind.Binary, sign, left, Product(symbol));
            }

            return left;
        }

        private Node Product(Func<string, string> symbol)
        {
            Node left = Power(symbol);
            while (Peek('*') || Peek('/'))
            {
                string sign = TakeOne();
                left = new Node(Kind.Binary, sign, left, Power(symbol));
            }

            return left;
        }

        private Node Power(Func<string, string> symbol)
        {
            Node left = Atom(symbol);
            return Take('^') ? new Node(Kind.Call, "pow", left, Atom(symbol)) : left;
        }

        private Node Atom(Func<string, string> symbol)
        {
            if (Take('-'))
            {
                return new Node(Kind.Minus, "-", Power(symbol));
            }

            if (Take('('))
            {
                Node inner = Sum(symbol);
                Expect(')');
                return inner;
            }

            string word = Word();
            if (char.IsDigit(word[0]))
            {
                return new Node(Kind.Number, word);
            }

            bool known = Functions.TryGetValue(word, out string? function);
            if (Take('('))
            {
                List<Node> parts = [Sum(symbol)];
                while (Take(','))
                {
                    parts.Add(Sum(symbol));
                }

                Expect(')');
                return new Node(Kind.Call, known ? function! : word, [.. parts]);
            }

            return new Node(Kind.Name, known ? function! : word == "pi" ? word : symbol(word));
        }

        private string Word()
        {
            Space();
            int start = _at;
            while (_at < text.Length && (char.IsLetterOrDigit(text[_at]) || text[_at] is '_' or '.'
                || (text[_at] == '-' && _at > start && text[_at - 1] is 'e' or 'E' && char.IsDigit(text[start]))))
            {
                _at++;
            }

            return _at > start ? text.Substring(start, _at - start) : throw new InvalidOperationException($"The formula '{text}' cannot be read at {_at.ToString(CultureInfo.InvariantCulture)}.");
        }

        private bool Peek(char c)
        {
            Space();
            return _at < text.Length && text[_at] == c;
        }

        private bool Take(char c)
        {
            if (!Peek(c))
            {
                return false;
            }

            _at++;
            return true;
        }

        private string TakeOne() => text[_at++].ToString();

        private void Expect(char c)
        {
            if (!Take(c))
            {
                throw new InvalidOperationException($"The formula '{text}' lacks '{c}' at {_at.ToString(CultureInfo.InvariantCulture)}.");
            }
        }

        private void Space()
        {
            while (_at < text.Length && char.IsWhiteSpace(text[_at]))
            {
                _at++;
            }
        }
    }
}
