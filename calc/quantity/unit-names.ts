import { type Unit, units } from "./units.ts";

const synonyms = new Map(
  Object.entries({
    lbs: "lb",
    lbm: "lb",
    hr: "h",
    hrs: "h",
    hour: "h",
    sec: "s",
    inch: "in",
    inches: "in",
    feet: "ft",
    us: "",
    deg: "",
    degc: "c",
    degf: "f",
    degr: "r",
    gauge: "g",
    gage: "g",
    abs: "a",
    absolute: "a",
  }),
);

/** One spelling for the many of a unit: `lbs/(hp·hr)`, `LB/HP-H` and `lb/(hp h)` all become `lb/hph`. */
const fold = (text: string): string =>
  text
    .replace(/[º˚]/g, "") // rings that people type for °, and that normalising would turn into letters
    .normalize("NFKC")
    .toLowerCase()
    .replaceAll("μ", "u")
    .replace(/[a-z]+/g, (word) => synonyms.get(word) ?? word)
    .replace(/[\s()·⋅∙*^°_.-]/g, "");

// Gauge units have no spelling of their own: the word behind a unit of pressure says what it counts from.
const spellings = new Map<string, Unit[]>();
for (const unit of Object.values(units)) {
  if (unit.gauge || !unit.label) continue;
  for (const name of new Set([fold(unit.id), fold(unit.label), ...unit.names].filter(Boolean)))
    spellings.set(name, [...(spellings.get(name) ?? []), unit]);
}

/** Where only the case of the first letter tells a million from a thousandth, it has to be right. */
const hasWrongPrefix = (typed: string, unit: Unit): boolean =>
  /^m(pa|w|j|bar)/i.test(unit.label) && /^m/i.test(typed) && typed[0] !== unit.label[0];

export const isPressure = (unit: Unit): boolean => `${unit.id}-g` in units;

export interface Named {
  /** The units that the text can mean, none if it is unknown. °F, for one, is a temperature and a difference. */
  readonly candidates: readonly Unit[];
  /** What the text says its pressure counts from. */
  readonly counts?: "gauge" | "absolute";
}

/** The units that a typed name can mean: `psig`, `inHg`, `m³/s`, `LBS/HP-HR`. */
export function unitsNamed(typed: string): Named {
  // Beside °C and °F the sign says nothing, and by itself it is an angle.
  const name = fold(typed) || (/deg|[°º˚]/i.test(typed) ? "degree" : "");
  const spelled = (spelling: string) =>
    (spellings.get(spelling) ?? []).filter((unit) => !hasWrongPrefix(typed, unit));
  const direct = spelled(name);
  const counts = name.endsWith("g") ? "gauge" : name.endsWith("a") ? "absolute" : undefined;
  if (direct.length || !counts) return { candidates: direct };
  return { candidates: spelled(name.slice(0, -1)).filter(isPressure), counts };
}
