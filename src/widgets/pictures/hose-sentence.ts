import type { Across, Layout } from "../../../calc/exchanger/layout.ts";

const words = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight"];
const inWords = (n: number): string => words[n] ?? String(n);
const channels = (n: number): string => (n === 1 ? "one channel" : `${inWords(n)} channels`);

/** Where the hoses go, in words: what the drawing shows. */
export function describeHoses(layout: Layout): string {
  switch (layout.kind) {
    case "along":
      return layout.water === "against"
        ? "Air from left to right. Water enters where the air leaves, runs against it, and leaves where the air enters."
        : "Air from left to right. Water enters where the air enters, runs along with it, and leaves where the air leaves.";
    case "across":
      return `${airOf(layout)} ${layout.passes === 1 ? onePass(layout) : manyPasses(layout)}`;
    case "side by side":
      return (
        "Air from left to right, one half of it past each of two passes that lie side by side. Water enters at the " +
        "bottom of the pass in front, runs up, turns in a header, runs down the pass behind, and leaves at its bottom. " +
        (layout.rows === 1
          ? "Each pass is one channel."
          : "Each pass has many channels, mixed in the header.")
      );
    case "shell":
      return shells(layout.shells, layout.tubePasses / layout.shells);
  }
}

function airOf({ air, passes }: Across): string {
  if (air === "mixed") return "Air from left to right, mixed on its whole way.";
  if (air === "remixed" && passes > 1) return "Air from left to right, mixed again between the passes.";
  return "Air from left to right, kept apart by fins on its whole way.";
}

function onePass({ rows }: Across): string {
  const through =
    rows === 1
      ? "in one channel"
      : `in ${rows === "many" ? "many channels" : channels(rows)}, one behind the other, all fed at once`;
  return `Water enters at the bottom, runs up across the air ${through}, and leaves at the top.`;
}

function manyPasses({ passes, order, rows, turn, next }: Across): string {
  const far = passes === 2 ? "second" : "last";
  const [starts, stops] = order === "counter" ? [far, "first"] : ["first", far];
  const isBundle = rows !== 1 && turn !== "mixed";
  const bends = isBundle ? "in bends of the tubes" : "in a return header";
  const ends = next === "same way" || passes % 2 === 1 ? "top" : "bottom";
  const enters = `Water enters at the bottom of the ${starts} of ${inWords(passes)} passes in the way of the air`;
  const leaves = `leaves at the ${ends} of the ${stops}`;
  const isPipe = next === "same way";
  const way =
    passes === 2
      ? `runs up, ${isPipe ? "is led down by a pipe, runs up" : `turns ${bends}, runs down`} the ${stops}, and leaves at its ${ends}.`
      : isPipe
        ? `runs up, is led down by a pipe to the next, and so on, and ${leaves}.`
        : `runs up and down by turns, each time ${bends} to the next, and ${leaves}.`;
  if (rows === 1) return `${enters}, ${way} Each pass is one channel.`;
  const kept = {
    mixed: `whose water is mixed ${isPipe ? "on the way" : "in the header"}.`,
    identical: "which keep their order: the first in one pass is the first in the next.",
    inverted: "which turn their order over: the first in one pass is the last in the next.",
  }[turn];
  return `${enters}, ${way} Each pass has ${rows === "many" ? "many channels" : channels(rows)}, ${kept}`;
}

function shells(count: number, tubes: number): string {
  const air =
    count === 1
      ? "Air from left to right through a shell, led to and fro by baffles."
      : `Air from left to right through ${inWords(count)} shells, one after the other, led to and fro by baffles.`;
  const passes = `up and down in ${inWords(tubes)} passes of tubes`;
  const water =
    count === 1
      ? `Water enters at the bottom, runs ${passes}, and leaves at the bottom.`
      : `Water enters at the bottom of the shell that the air meets last, runs ${passes} in each shell, and leaves at the bottom of the shell that the air meets first.`;
  return `${air} ${water}`;
}
