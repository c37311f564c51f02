const signs: Readonly<Record<string, string>> = {
  times: "×",
  infty: "∞",
  ge: "≥",
  le: "≤",
  partial: "∂",
  circ: "°",
  ell: "ℓ",
  sum: "Σ",
  int: "∫",
  alpha: "α",
  beta: "β",
  gamma: "γ",
  delta: "δ",
  varepsilon: "ε",
  epsilon: "ε",
  zeta: "ζ",
  eta: "η",
  theta: "θ",
  kappa: "κ",
  lambda: "λ",
  mu: "µ",
  nu: "ν",
  xi: "ξ",
  pi: "π",
  rho: "ρ",
  sigma: "σ",
  tau: "τ",
  phi: "φ",
  varphi: "φ",
  chi: "χ",
  psi: "ψ",
  omega: "ω",
  Gamma: "Γ",
  Delta: "Δ",
  Theta: "Θ",
  Lambda: "Λ",
  Xi: "Ξ",
  Pi: "Π",
  Sigma: "Σ",
  Phi: "Φ",
  Psi: "Ψ",
  Omega: "Ω",
  cdot: "·",
}; // prettier-ignore
/** Spaces, by the letter or sign after the backslash. */
const spaces = new Set([",", ";", ":", " ", "quad", "qquad"]);
/** Signs that keep the space behind them: TeX lets a command swallow it. */
const operators = new Set(["times", "ge", "le", "cdot"]);
const nothing = new Set(["!", "left", "right", "bigl", "bigr", "displaystyle"]);
const accents: Readonly<Record<string, string>> = { dot: "\u0307", bar: "\u0304" };
const groups = new Set(["mathrm", "text", "mathopen", "mathclose"]);
const superscripts: Readonly<Record<string, string>> = Object.fromEntries(
  [..."0123456789-"].map((c, i) => [c, "⁰¹²³⁴⁵⁶⁷⁸⁹⁻".charAt(i)]),
);

/** Brackets where a part is more than one thing. */
const single = (text: string): string =>
  /^[\p{L}\p{M}\p{N}_.°'*]*$/u.test(text) || /^\([^()]*\)$/.test(text) ? text : `(${text})`;

const power = (text: string): string => {
  if (/^[°*'_]$/.test(text)) return text;
  if (/^-?\d+$/.test(text)) return [...text].map((c) => superscripts[c]).join("");
  return `^${single(text)}`;
};

/** Reads a formula from left to right, and keeps where it is. */
class Reader {
  private at = 0;
  constructor(private readonly tex: string) {}

  private takes(pattern: RegExp): string | undefined {
    const sticky = new RegExp(pattern.source, "uy");
    sticky.lastIndex = this.at;
    const found = sticky.exec(this.tex);
    if (found) this.at = sticky.lastIndex;
    return found?.[0];
  }

  /** Up to the end, or to the bracket or the `\end` that closes. */
  all(): string {
    let text = "";
    while (this.at < this.tex.length) {
      if (this.takes(/\}|\\end\{\w+\}/) !== undefined) return text;
      text += this.next();
    }
    return text;
  }

  /** One thing: a group, a command with what it takes, or a letter. */
  private next(): string {
    if (this.takes(/\{/) !== undefined) return this.all();
    const command = this.takes(/\\(?:[A-Za-z]+|.)/);
    if (command !== undefined) return this.command(command.slice(1));
    if (this.takes(/\s+/) !== undefined) return " ";
    if (this.takes(/\^/) !== undefined) return power(this.argument());
    if (this.takes(/_/) !== undefined) return `_${single(this.argument())}`;
    if (this.takes(/&/) !== undefined) return " for ";
    if (this.takes(/-/) !== undefined) return "−";
    return this.takes(/\d+(?:\.\d+)?|./) ?? "";
  }

  private argument(): string {
    this.takes(/\s+/);
    if (this.tex[this.at] !== "{" && this.tex[this.at] !== "\\") return this.takes(/./) ?? "";
    return this.next().trim().replaceAll("−", "-");
  }

  private command(name: string): string {
    if (name === "frac" || name === "dfrac") return `${single(this.inside())}/${single(this.inside())}`;
    if (name === "sqrt") {
      const isCube = this.takes(/\[3\]/) !== undefined;
      return `${isCube ? "∛" : "√"}(${this.inside()})`;
    }
    if (name in accents) return this.inside().replace(/^./u, (letter) => letter + accents[name]);
    if (name === "begin") {
      this.takes(/\{\w+\}/);
      return this.all().trim();
    }
    if (name === "\\") {
      this.takes(/\[[^\]]*\]/);
      return "; ";
    }
    if (groups.has(name)) return this.inside();
    if (spaces.has(name)) return " ";
    if (nothing.has(name)) return "";
    if (!operators.has(name)) this.takes(/\s+(?=[A-Za-z])/);
    // A function parts from its argument, unless that stands in brackets.
    const isBeforeBracket = /^(?:\\mathopen\{\}|\\left|\\bigl)*\(/.test(this.tex.slice(this.at));
    return signs[name] ?? (name.length > 1 && !isBeforeBracket ? `${name} ` : name);
  }

  /** What a command takes, with its minus as it is printed. */
  private inside(): string {
    this.takes(/\s+/);
    return this.next().trim();
  }
}

/** A formula of this site in one line of plain text: `\frac{p}{R\,T}` is `p/(R T)`. */
export const texAsText = (tex: string): string =>
  new Reader(tex)
    .all()
    .replace(/\s+/g, " ")
    .replace(/ ([;,)])/g, "$1")
    .replace(/\( /g, "(")
    .trim();
