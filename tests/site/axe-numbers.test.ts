import { test } from "vitest";
import { expectNoViolation, patience } from "./axe.ts";
import { numberPages } from "./dist.ts";

// All calculators are one sheet with other fields. These have between them every kind of field and of picture.
const unlike = ["charge-path", "cooler-rating", "arrangements", "unit-converter"].map(
  (id) => `/numbers/${id}/`,
);

test.each(numberPages)(
  "%s has no violation",
  (path) => expectNoViolation(path, unlike.includes(path)),
  patience,
);
