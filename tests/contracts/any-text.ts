import fc from "fast-check";
import { units } from "../../calc/quantity/units.ts";

/** Pieces of calculations as people type them, and of what is none. */
const piece = fc.oneof(
  fc.double().map(String),
  fc.integer({ min: -9, max: 1200 }).map(String),
  fc.constantFrom(...Object.values(units).flatMap(({ id, label, names }) => [id, label, ...names])),
  fc.constantFrom(
    ...[
      "+",
      "-",
      "−",
      "–",
      "*",
      "×",
      "·",
      "/",
      "÷",
      "^",
      "^-1",
      "²",
      "(",
      ")",
      "((",
      "))",
      ",",
      ".",
      "%",
      "~",
      ";",
    ],
    ...[
      "at 60 °F",
      "at 60 °F 14.7 psi",
      "at",
      "gauge",
      "absolute",
      "psig",
      "e",
      "1e999",
      "-0",
      "3/8 in",
      "5'3\"",
    ],
    ...["constructor", "__proto__", "toString", "NaN", "Infinity", "π", "½", "١٢", "=1+1", "<b>1</b>"],
  ),
);

/** Much of one thing: brackets in brackets, signs in a row, digits without end. */
const heap = fc
  .tuple(
    fc.constantFrom("(", ")", "-", "1+", "2^", "1/", "9", "1 bar+", "at ", " ", "%", "é", "𝟙"),
    fc.nat(10_000),
  )
  .map(([one, times]) => one.repeat(times));

/** Texts that people type, and texts that nobody should. */
export const anyText: fc.Arbitrary<string> = fc.oneof(
  fc.string({ maxLength: 200 }),
  fc.string({ unit: "binary", maxLength: 40 }),
  fc
    .tuple(fc.double(), fc.constantFrom("", " ", "\u00a0"), fc.constantFrom(...Object.values(units)))
    .map(([number, space, unit]) => `${number}${space}${unit.label}`),
  fc
    .tuple(fc.array(piece, { minLength: 1, maxLength: 12 }), fc.constantFrom("", " "))
    .map(([pieces, space]) => pieces.join(space)),
  fc.tuple(heap, piece, heap).map((parts) => parts.join("").slice(0, 10_000)),
  // As deep as a field takes: inside the length that is read.
  fc
    .tuple(fc.integer({ min: 1, max: 95 }), piece)
    .map(([deep, inside]) => `${"(".repeat(deep)}${inside}${")".repeat(deep)}`),
  fc.constantFrom(
    "",
    " ",
    "-0",
    "1e400",
    "1e999",
    "NaN",
    "Infinity",
    "undefined",
    "0",
    "−1",
    "1e-320",
    "~5",
    "5;psi",
    "50 %",
    "__proto__",
    "constructor",
    "\ud800",
    "<img src=x onerror=alert(1)>",
  ),
);
