import { describe, expect, test } from "vitest";
import { measures, narrowFrame, wideFrame } from "../../../../src/components/figures/cutaway/frame.ts";
import {
  type CutawayNumbers,
  labelNames,
  type PlacedLabel,
  placeLabels,
} from "../../../../src/components/figures/cutaway/labels.ts";
import { describeCutaway } from "../../../../src/components/figures/cutaway/sentence.ts";
import { streams } from "../../../../src/components/figures/cutaway/streams.ts";
import { TwoPassCutaway } from "../../../../src/components/figures/TwoPassCutaway.tsx";
import { type Box, meet } from "../../../../src/widgets/pictures/boxes.ts";
import { textWidth } from "../../../../src/widgets/pictures/text.ts";
import { broken, collisions, drawings, narrow, reach, texts, wide } from "../../widgets/pictures/svg.ts";

/** About the room that each line of a label takes. */
const boxesOf = ({ x, anchor, lines }: PlacedLabel, font: number): readonly Box[] =>
  lines.map(({ text, y }) => {
    const w = textWidth(text, font);
    const shift = { start: 0, middle: w / 2, end: w }[anchor];
    return { x: x - shift, y: y - 0.75 * font, w, h: font };
  });

const none: CutawayNumbers = {};
const usual: CutawayNumbers = {
  airIn: "190 °C",
  airOut: "31.9 °C",
  waterIn: "28.0 °C",
  waterMid: "29.3 °C",
  waterOut: "33.7 °C",
};
const long: CutawayNumbers = {
  airIn: "−188.8 °C",
  airOut: "−188.9 °C",
  waterIn: "−188.6 °C",
  waterMid: "−188.5 °C",
  waterOut: "−188.7 °C",
};
const cases = [none, usual, long].flatMap((numbers) =>
  (["right", "swapped"] as const).map((hoses) => ({ labels: labelNames, numbers, hoses })),
);

describe("both drawings, with any numbers and hoses", () => {
  test("no label covers another, and all stand within the drawing", () => {
    for (const wanted of cases) {
      for (const frame of [wideFrame, narrowFrame]) {
        const boxes = placeLabels(frame, wanted).flatMap((label) => boxesOf(label, frame.font));
        boxes.forEach((a, i) => {
          for (const b of boxes.slice(i + 1)) expect(meet(a, b), `${JSON.stringify([a, b])}`).toBe(false);
          expect(a.x).toBeGreaterThanOrEqual(-0.5);
          expect(a.y).toBeGreaterThanOrEqual(0);
          expect(a.x + a.w).toBeLessThanOrEqual(frame.width + 0.5);
          expect(a.y + a.h).toBeLessThanOrEqual(frame.height);
        });
      }
    }
  });

  test("no leader runs through a label, and each ends inside the drawing", () => {
    for (const wanted of cases) {
      for (const frame of [wideFrame, narrowFrame]) {
        const labels = placeLabels(frame, wanted);
        const boxes = labels.flatMap((label) => boxesOf(label, frame.font));
        for (const { leader } of labels) {
          if (!leader) continue;
          const [[ax, ay], [bx, by]] = leader;
          for (let u = 0; u <= 1; u += 0.02) {
            const point = { x: ax + u * (bx - ax), y: ay + u * (by - ay), w: 0, h: 0 };
            expect(boxes.filter((box) => meet(box, point))).toEqual([]);
          }
          expect(bx > 0 && bx < frame.width && by > 0 && by < frame.height).toBe(true);
        }
      }
    }
  });

  test("can be drawn, and draw nothing outside their view box", () => {
    for (const wanted of cases) {
      const drawn = drawings(<TwoPassCutaway {...wanted} />);
      expect(drawn).toHaveLength(2);
      for (const [i, frame] of [wideFrame, narrowFrame].entries()) {
        const svg = drawn[i] ?? "";
        expect(broken(svg)).toBeUndefined();
        expect(collisions(svg)).toEqual([]);
        const points = reach(svg.replace(/<pattern[\s\S]*?<\/pattern>/g, ""));
        expect(points.length).toBeGreaterThan(100);
        for (const [x, y] of points) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(frame.width);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(frame.height);
        }
      }
    }
  });
});

test("every number that is drawn is in the sentence, and every part that is named", () => {
  for (const wanted of cases) {
    const says = describeCutaway(wanted);
    for (const svg of drawings(<TwoPassCutaway {...wanted} />)) {
      expect(svg).toContain('role="img"');
      expect(svg).toContain(`aria-label="${says}"`);
    }
    for (const number of Object.values(wanted.numbers)) expect(says).toContain(number);
    for (const part of ["core", "first pass", "second pass", "artition", "return tank", "vent", "drain"])
      expect(says).toContain(part);
  }
});

test("every tube has water in it, and opens into the tanks at both ends", () => {
  for (const frame of [wideFrame, narrowFrame]) {
    const { left, right, cavity, middle } = measures(frame);
    const water = streams(frame, "right").water.join("");
    for (const x of [...left, ...right]) {
      expect(water).toMatch(new RegExp(`[ML]${x} `));
      expect(x - frame.tubes.half).toBeGreaterThanOrEqual(cavity[0]);
      expect(x + frame.tubes.half).toBeLessThanOrEqual(cavity[1]);
      // The partition stands between the passes.
      expect(Math.abs(x - middle)).toBeGreaterThan(frame.tubes.half + frame.wall);
    }
  }
});

test("swapped hoses turn the water round, and leave the air and the cooler as they are", () => {
  const paths = (svg: string, look: string) =>
    [...svg.matchAll(new RegExp(`<path class="${look}"[^>]* d="([^"]*)"`, "g"))].map(([, d]) => d);
  const [right, swapped] = [
    drawings(<TwoPassCutaway numbers={usual} />),
    drawings(<TwoPassCutaway numbers={usual} hoses="swapped" />),
  ];
  for (const size of [wide, narrow]) {
    const [a = "", b = ""] = [right[size], swapped[size]];
    expect(paths(a, "water-tip")).toHaveLength(1);
    expect(paths(b, "water-tip")).not.toEqual(paths(a, "water-tip"));
    for (const look of ["body", "tip", "outline", "thin"]) expect(paths(b, look)).toEqual(paths(a, look));
    const at = (svg: string, text: string) => texts(svg).find((one) => one.text === text)?.x ?? Number.NaN;
    expect(at(a, "water in")).toBeGreaterThan(at(a, "water out"));
    expect(at(b, "water in")).toBeLessThan(at(b, "water out"));
    expect(at(a, "first pass")).toBeGreaterThan(at(a, "second pass"));
    expect(at(b, "first pass")).toBeLessThan(at(b, "second pass"));
    // The numbers go with the hoses.
    expect(at(b, "28.0 °C")).toBeLessThan(at(b, "33.7 °C"));
  }
  const says = (hoses: "right" | "swapped") => describeCutaway({ labels: labelNames, numbers: usual, hoses });
  expect(says("right")).toContain("first pass, which the air meets last");
  expect(says("swapped")).toContain("first pass, which the air meets first");
  expect(says("swapped")).toContain("The hoses are swapped");
});

test("labels are shown as asked for; water is named, and numbers stand, in any case", () => {
  for (const svg of drawings(<TwoPassCutaway labels={["core"]} numbers={usual} />)) {
    const shown = texts(svg).map(({ text }) => text);
    expect(shown.sort()).toEqual(
      ["core: fins", "and tubes", "water", "water", ...Object.values(usual)].sort(),
    );
  }
  const says = describeCutaway({ labels: ["core"], numbers: {}, hoses: "right" });
  expect(says).not.toMatch(/vent|drain|partition|°C/);
});
