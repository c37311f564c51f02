import { expect, test } from "vitest";
import {
  barometerField,
  exampleBarometer,
  exampleEntry,
  readBarometer,
} from "../../../../src/calculators/engine/barometer.ts";

const typed = (text: string, unit = "kPa") => ({ typed: text, example: exampleBarometer, unit, shown: unit });

test("the example is a pressure that a barometer can show, in each system's own unit", () => {
  expect(readBarometer(exampleEntry("metric"))).toMatchObject({ ok: true, value: exampleBarometer });
  expect(exampleEntry("us").unit).toBe("psi");
});

test("a station pressure is read in any unit", () => {
  expect(readBarometer(typed("29.5 inHg"))).toMatchObject({ ok: true, value: expect.closeTo(99_898, 0) });
});

test("what no station can show is refused with what is accepted", () => {
  for (const text of ["30", "120", "0"]) {
    const reading = readBarometer(typed(text));
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.says).toMatch(/\.$/);
  }
  const [least, most] = barometerField.limits;
  expect(readBarometer(typed(String(least), "Pa")).ok).toBe(true);
  expect(readBarometer(typed(String(most), "Pa")).ok).toBe(true);
});

test.each(["-5", "0", "-120 kPa gauge", "15 psig", "abc", "", "9000 m", "1e999"])(
  "what is said of “%s” offers no gauge",
  (text) => {
    const reading = readBarometer(typed(text));
    const says = reading.ok ? "" : reading.says;
    expect(says).toMatch(/^\S.*\.$/);
    expect(says.replace("A gauge counts from the barometer", "")).not.toMatch(/gauge/);
    expect(says).not.toMatch(/the barometer is/);
  },
);

test("a gauge reading has no meaning here", () => expect(readBarometer(typed("5 psig")).ok).toBe(false));
