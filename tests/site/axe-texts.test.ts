import { test } from "vitest";
import { expectNoViolation, patience } from "./axe.ts";
import { numberPages, quickPages, unlikePages } from "./dist.ts";

// Calculators and texts apart, so that two of them are looked at at a time.
test.each(unlikePages.filter((path) => ![...numberPages, ...quickPages].includes(path)))(
  "%s has no violation at any width, in light and dark",
  (path) => expectNoViolation(path),
  patience,
);
