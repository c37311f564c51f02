/** Why a number may be typed into a text. Of common practice the same paragraph says so. */
export type Why =
  | "common practice"
  | "definition"
  | "limit of a source"
  | "error that is supposed"
  | "what the reader is to type"
  | "arithmetic that no calculator does";

/**
 * Numbers with a unit that stand in content/ as they were typed, by file: enough of the words around each to know it, and
 * why no calculator says it.
 */
export const typedNumbers: Readonly<Record<string, Readonly<Record<string, Why>>>> = {
  "content/examples/hill-climb-four.mdx": {
    "come to a gain of 86 %": "arithmetic that no calculator does",
  },
  "content/numbers/air-demand.mdx": {
    "4.5 to 6.5 kg/h of air for each kilowatt": "common practice",
  },
  "content/numbers/cooler-effectiveness.mdx": {
    "a heat balance within 3 %": "common practice",
    "within 5 % acceptable": "common practice",
    "Beyond 7 % stop": "common practice",
    "A rise of the water below 3 K": "common practice",
    "With 1 K on each of the three temperatures": "error that is supposed",
  },
  "content/numbers/cooler-response.mdx": {
    "a heat capacity of about 0.9 kJ/(kg K)": "common practice",
    "answer with 5 to 20 s": "common practice",
    "with 20 to 60 s": "common practice",
    "take 30 to 300 s": "common practice",
  },
  "content/numbers/duct-loss.mdx": {
    "from 0.3 to 1 mm": "common practice",
    "20 to 35 m/s in an intake pipe": "common practice",
    "25 to 50 m/s in a boosted one": "common practice",
    "a smooth bend below 45°": "limit of a source",
    "a mitre below 15°": "limit of a source",
  },
  "content/numbers/measured-loss.mdx": {
    // Three to the power 0.1 is 1.116.
    "makes the loss wrong by 12 %": "arithmetic that no calculator does",
  },
  "content/numbers/power-air.mdx": {
    "In air with 20 g/kg the flow is 2 % more": "definition",
    "commonly 5 to 15 % off": "common practice",
  },
  "content/numbers/power-torque.mdx": {
    "commonly reaches 8 to 13 bar": "common practice",
  },
  "content/numbers/pump-suction.mdx": {
    "a clean strainer takes 2 to 5 kPa": "common practice",
    "cleaned when it takes 15 to 20 kPa": "common practice",
    "0.6 to 1 m more than the pump needs": "common practice",
    "or 1.3 times what it needs": "common practice",
  },
  "content/numbers/static-total.mdx": {
    "1 to 2 mm wide": "common practice",
  },
  "content/numbers/uneven-air.mdx": {
    "put 100 % here": "what the reader is to type",
  },
  "content/numbers/unit-converter.mdx": {
    "stated at 0 °C": "definition",
    "stated at 20 °C": "definition",
  },
  "content/numbers/water-flow.mdx": {
    "a tower takes 40 to 50 °C back": "common practice",
    "a drain about 40 °C": "common practice",
  },
  "content/numbers/water-properties.mdx": {
    "its triple point, 0.01 °C": "definition",
    "counts from 0 °C": "definition",
    "from 0 °C to boiling": "limit of a source",
    "boils at 110 °C": "limit of a source",
    "those for 0.1 MPa": "limit of a source",
  },
  "content/safety/cautions.mdx": {
    "commonly stands well above 100 °C": "common practice",
  },
};
