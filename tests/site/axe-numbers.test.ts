import { test } from "vitest";
import { expectNoViolation, patience } from "./axe.ts";
import { numberPages, quickPages } from "./dist.ts";

// All calculators are one sheet with other fields. These have between them every kind of field and of picture.
const unlike = [
  ...["charge-path", "cooler-rating", "arrangements", "unit-converter"].map((id) => `/numbers/${id}/`),
  "/quick/boost-ratio/",
];

test.each([...numberPages, ...quickPages])(
  "%s has no violation",
  (path) => expectNoViolation(path, unlike.includes(path)),
  patience,
);
