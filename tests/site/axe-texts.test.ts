import { test } from "vitest";
import { expectNoViolation, patience } from "./axe.ts";
import { examplePages, extremesOf, numberPages, quickPages, unlikePages } from "./dist.ts";

// All examples are one sheet with other steps.
const alike = examplePages.filter((path) => !extremesOf(examplePages).includes(path));

// Calculators and texts apart, so that two of them are looked at at a time.
test.each(unlikePages.filter((path) => ![...numberPages, ...quickPages].includes(path)))(
  "%s has no violation",
  (path) => expectNoViolation(path, !alike.includes(path)),
  patience,
);
