import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { Refusal, scaffold } from "../../../src/new/scaffold.ts";

let root = "";
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "scaffold-"));
  for (const topic of ["engine", "flow", "quantity"])
    mkdirSync(join(root, "calc", topic), { recursive: true });
});
afterEach(() => rmSync(root, { recursive: true }));

const read = (path: string) => readFileSync(join(root, path), "utf8");

describe("what is written", () => {
  test.each([
    ["lesson", "thin-air", ["content/lessons/thin-air.mdx"]],
    ["example", "thin-air", ["content/examples/thin-air.mdx"]],
    ["relation", "flow/thin-air", ["calc/flow/thin-air.ts", "content/checks/thin-air.json"]],
    [
      "calculator",
      "thin-air",
      [
        "src/calculators/thin-air.ts",
        "content/numbers/thin-air.mdx",
        "calc/engine/thin-air.ts",
        "content/checks/thin-air.json",
      ],
    ],
    [
      "calculator",
      "flow/thin-air",
      [
        "src/calculators/thin-air.ts",
        "content/numbers/thin-air.mdx",
        "calc/flow/thin-air.ts",
        "content/checks/thin-air.json",
      ],
    ],
  ])("%s %s", (kind, id, paths) => {
    expect(scaffold([kind, id], root)).toEqual(paths);
    for (const path of paths) expect(read(path)).not.toMatch(/\{\{\w+\}\}/);
  });

  test("ids equal file names, and the export is the id in camel case", () => {
    scaffold(["calculator", "thin-air"], root);
    expect(read("calc/engine/thin-air.ts")).toMatch(/export const thinAir = [\s\S]*id: "engine\/thin-air"/);
    expect(read("src/calculators/thin-air.ts")).toMatch(
      /import \{ thinAir \} from "..\/..\/calc\/engine\/thin-air.ts"[\s\S]*id: "thin-air"/,
    );
    expect(JSON.parse(read("content/checks/thin-air.json")).relation).toBe("engine/thin-air");
  });
});

describe("what is refused, with nothing written", () => {
  test.each([
    [[], /Say what is new/],
    [["widget", "thin-air"], /“widget” is none of lesson, calculator, relation, example/],
    [["lesson"], /needs an id/],
    [["lesson", "Thin Air"], /“Thin Air” is no id/],
    [["lesson", "../../thin-air"], /is no id/],
    [["lesson", "thin-air", "thick-air"], /one id too many: thick-air/],
    [["lesson", "flow/thin-air"], /has no topic/],
    [["relation", "thin-air"], /needs its topic.*Topics: engine, flow\./],
    [["relation", "weather/thin-air"], /no topic “weather”/],
    [["relation", "quantity/thin-air"], /no topic “quantity”/],
  ])("%j", (args, says) => {
    expect(() => scaffold(args, root)).toThrow(Refusal);
    expect(() => scaffold(args, root)).toThrow(says);
    expect(readdirSync(root)).toEqual(["calc"]);
  });

  test("what is there already", () => {
    mkdirSync(join(root, "content/checks"), { recursive: true });
    writeFileSync(join(root, "content/checks/thin-air.json"), "mine");
    expect(() => scaffold(["calculator", "thin-air"], root)).toThrow(
      "content/checks/thin-air.json is there already",
    );
    expect(read("content/checks/thin-air.json")).toBe("mine");
    expect(readdirSync(root)).toEqual(["calc", "content"]);
  });
});
