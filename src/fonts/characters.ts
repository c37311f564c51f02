// What the two faces that formulas need at once hold: what the formulas of this site use, and a little room beside it.
const span = (from: number, to: number): string =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)).join("");

export const ascii = span(0x20, 0x7e);

/** Upright: digits, words, capitals of Greek, accents that stand over letters, operators and relations. */
export const upright = `${ascii}\u00a0°±²³¹·×÷ˆˇˉ˘˙¨˜′ΓΔΘΛΞΠΣΥΦΨΩ‖…←↑→↓∂∆∇∈∏∑−∓∗∘∙√∝∞∣∥∫∼≈≠≡≤≥≪≫⋅⋆ℓ`;

/** Slanted: letters, Latin and Greek. */
export const slanted = `${span(0x41, 0x5a)}${span(0x61, 0x7a)}${span(0x391, 0x3c9)}ϑϕϖϱϵ`;
