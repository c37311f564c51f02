import { asSentence } from "../../../widgets/pictures/text.ts";
import type { LabelsWanted } from "./labels.ts";

/** The cutaway as sentences, for those who do not see it: where both streams go, with every number that is drawn. */
export function describeCutaway({ hoses, labels, numbers }: LabelsWanted): string {
  const { airIn, airOut, waterIn, waterMid, waterOut } = numbers;
  const at = (number: string | undefined) => (number ? ` at ${number}` : "");
  const isRight = hoses === "right";
  const [first, last] = isRight ? ["last", "first"] : ["first", "last"];
  const [entry, exit] = isRight ? ["right", "left"] : ["left", "right"];
  return [
    "Cutaway of a water-fed cooler with two passes",
    `Air comes in at the left${at(airIn)}, flows between the fins and across the tubes of the core, and goes out at the right${at(airOut)}`,
    `${isRight ? "The hoses are the right way round" : "The hoses are swapped"}: water comes in under the core at the ${entry}${at(waterIn)} and rises through the first pass, which the air meets ${first}`,
    `It turns in the return tank over the core${at(waterMid)}, comes down through the second pass, which the air meets ${last}, and goes out at the ${exit}${at(waterOut)}`,
    labels.includes("partition") && "A partition parts the two halves of the tank under the core",
    labels.includes("vent") && "The vent is at the highest point of the return tank",
    labels.includes("drain") && "Each half of the tank under the core has a drain at its lowest point",
  ]
    .filter((text) => text !== false)
    .map(asSentence)
    .join(" ");
}
