/** The number that a text begins with, and what stands behind it. */
export interface LeadingNumber {
  readonly number: number;
  readonly rest: string;
  /** It holds a comma or points that one country reads as thousands and another as a decimal mark. */
  readonly isDoubtful: boolean;
  /** A double cannot hold it. */
  readonly trouble?: "too large" | "too close to zero";
}

const space = " \\u00a0\\u2009\\u202f";
const sign = "[-+−–]?";
const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

const digitGroups = `(?:\\d|[.,]\\d)(?:[\\d.,]|[${space}'’](?=\\d))*`;

const leadingNumber = new RegExp(
  `^(${sign})\\s*(${digitGroups})` +
    `(?:e(${sign}\\d+)|\\s*[×x*·]\\s*10(?:\\s*\\^\\s*(${sign}\\d+)|([⁺⁻]?[${superscripts}]+)))?\\s*(.*)$`,
  "isu",
);

/** As it stands inside a calculation: its sign and a power of ten are operations there. */
const operand = new RegExp(`^()(${digitGroups})(?:e(${sign}\\d+))?()()\\s*(.*)$`, "isu");

const ascii = (text: string): string =>
  text
    .replace(/[−–⁻]/, "-")
    .replace("⁺", "+")
    .replace(/[⁰¹²³⁴-⁹]/g, (c) => String(superscripts.indexOf(c)));

/** Three figures behind each mark, and the same mark throughout. */
const thousands = new RegExp(`^[1-9]\\d{0,2}([.,'’${space}])\\d{3}(?:\\1\\d{3})*$`, "u");

/** Digits with one decimal point, or nothing where the marks between the digits make no sense. */
function ungroup(text: string): string | undefined {
  const digits = text.replace(/[.,]$/, "");
  const marks = digits.replace(/[^.,]/g, "");
  // One point is always a decimal mark. One comma is too, unless it parts off exactly three figures.
  const hasFraction =
    new Set(marks).size === 2 || marks === "." || (marks === "," && !thousands.test(digits));
  const end = hasFraction ? Math.max(digits.lastIndexOf(","), digits.lastIndexOf(".")) : digits.length;
  const whole = digits.slice(0, end);
  const fraction = digits.slice(end + 1);
  if (/\D/.test(fraction) || (/\D/.test(whole) && !thousands.test(whole))) return undefined;
  return `${whole.replace(/\D/g, "")}.${fraction}`;
}

/**
 * Reads the decimal number at the start of a text: `1,200`, `1 200.5`, `0,35`, `−3`, `1.2e3`, `1.2 × 10⁻⁵`. Nothing
 * if there is none. Time grows with the square of the length, which the caller bounds.
 */
export const readLeadingNumber = (text: string): LeadingNumber | undefined => numberBy(leadingNumber, text);

/** The same without a sign and without `× 10⁻⁵`, which are operations inside a calculation. */
export const readOperand = (text: string): LeadingNumber | undefined => numberBy(operand, text);

function numberBy(pattern: RegExp, text: string): LeadingNumber | undefined {
  const [, minus = "", digits = "", e, power, raised, rest = ""] = pattern.exec(text) ?? [];
  const isOtherBase = digits === "0" && /^(?:x[\da-f]|[ob]\d)/i.test(rest);
  const plain = digits && !isOtherBase && !/^[\d.,]/.test(rest) ? ungroup(digits) : undefined;
  if (plain === undefined) return undefined;
  const exponent = ascii(e || power || raised || "0");
  const number = Number(`${ascii(minus)}${plain}e${exponent}`) + 0;
  const trouble = !Number.isFinite(number)
    ? "too large"
    : number === 0 && /[1-9]/.test(plain)
      ? "too close to zero"
      : undefined;
  const isDoubtful = digits.includes(",") || digits.split(".").length > 2;
  return { number, rest, isDoubtful, ...(trouble && { trouble }) };
}

/** An exponent in small raised figures at the start of a text: `⁻²`. */
export function readRaised(text: string): { readonly exponent: number; readonly rest: string } | undefined {
  const [raised] = new RegExp(`^[⁺⁻]?[${superscripts}]+`, "u").exec(text) ?? [];
  return raised === undefined
    ? undefined
    : { exponent: Number(ascii(raised)), rest: text.slice(raised.length).trimStart() };
}
