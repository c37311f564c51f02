import { renderToString } from "preact-render-to-string";
import { expect, test } from "vitest";
import { grainMass, LitreOfAir, scattered } from "../../../../src/components/figures/LitreOfAir.tsx";

const litres = [
  { label: "1 inlet", grams: 1.157 },
  { label: "2 after the compressor", grams: 1.899 },
  { label: "3 after the cooler", grams: 2.283 },
];

test("each litre holds one grain for every tenth of a gram", () => {
  const drawn = renderToString(<LitreOfAir litres={litres} />)
    .split("<li>")
    .slice(1);
  expect(drawn.map((li) => li.match(/class="grain" d="([^"]*)"/)?.[1]?.match(/h0/g)?.length)).toEqual([
    12, 19, 23,
  ]);
  expect(drawn[0]).toContain("1.157 g");
});

test("heavier air takes heavier grains, so that they never touch", () => {
  expect(grainMass(litres)).toBe(0.1);
  expect(grainMass([{ label: "", grams: 20 }])).toBe(0.2);
  const points = scattered(120).map(([u, v]) => [u * 88, v * 88] as const);
  points.forEach(([x, y], i) => {
    for (const [a, b] of points.slice(i + 1)) expect(Math.hypot(a - x, b - y)).toBeGreaterThan(4.8);
  });
});

test("more air only adds grains", () => {
  expect(scattered(30).slice(0, 12)).toEqual(scattered(12));
});
