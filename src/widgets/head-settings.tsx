import { useEffect, useLayoutEffect, useState } from "preact/hooks";
import { defaultUnit, kinds } from "../../calc/quantity/kinds.ts";
import { readQuantity } from "../../calc/quantity/read.ts";
import { repeated } from "../../calc/quantity/repeated.ts";
import { fromSI } from "../../calc/quantity/units.ts";
import { writeBound, writeIn, writePlain } from "../../calc/quantity/write.ts";
import {
  barometerField,
  elevationField,
  exampleBarometer,
  readBarometer,
} from "../calculators/engine/barometer.ts";
import type { Entry } from "../calculators/engine/entry.ts";
import type { Message } from "../calculators/engine/evaluate.ts";
import { FieldRow } from "./field.tsx";
import { change, changeSystem, keep, restore, settings, visiting } from "./settings.ts";
import { unitLabel } from "./unit-label.ts";
import { useSettings, useSurroundings } from "./use-surroundings.ts";

const stationHelp =
  "As the instrument on the spot reads, absolute; not the weather report’s figure, which is corrected to sea level.";
const elevationHelp =
  "Gives the pressure of the standard atmosphere. Weather moves the real one by a few per cent.";

/** The barometer, asked once for the whole site, and the unit system. */
export function HeadSettings() {
  const around = useSurroundings();
  const { barometer, fromElevation } = useSettings();
  const [isGuest, setGuest] = useState(false);
  const [station, setStation] = useState<Entry | null>(null);
  const [elevation, setElevation] = useState<Entry | null>(null);
  const [messages, setMessages] = useState<Record<"station" | "elevation", readonly Message[]>>({
    station: [],
    elevation: [],
  });
  useLayoutEffect(() => {
    restore();
    return visiting.subscribe((guest) => setGuest(guest !== null));
  }, []);

  const { system } = around;
  const unit = kinds.pressure[system];
  const value = writeIn(around.barometer.value, unit);

  useEffect(() => {
    // What was typed here before gives way to a reading that came from elsewhere.
    setStation((entry) => (entry && readBarometer(entry).ok ? null : entry));
    if (!fromElevation) setElevation(null);
  }, [fromElevation, barometer]);

  const enterStation = (entry: Entry) => {
    setStation(entry);
    setElevation(null);
    const reading = readBarometer(entry);
    setMessages({ elevation: [], station: reading.ok ? [] : [{ tone: "invalid", says: reading.says }] });
    if (reading.ok && entry.typed !== null) change({ barometer: entry, fromElevation: false });
  };
  const enterElevation = async (entry: Entry) => {
    setElevation(entry);
    const says = await takeElevation(entry);
    setMessages({ station: [], elevation: says === null ? [] : [{ tone: "invalid", says }] });
    if (says === null) setStation(null);
  };
  const takeElevation = async (entry: Entry): Promise<string | null> => {
    if (entry.typed === null) return null;
    const reading = readQuantity(entry.typed, "altitude", entry.unit, {});
    if (!reading.ok) return reading.says;
    const [least, most] = elevationField.limits;
    if (reading.value < least || reading.value > most) {
      const write = (x: number) => writeBound(x, entry.shown);
      return `${repeated(entry.typed)} is beyond the places where engines are tested. Accepted: ${write(least)} to ${write(most)}.`;
    }
    const shown = defaultUnit("pressure", system);
    const { pressureAt } = await import("./pressure-at.ts");
    const typed = writePlain(fromSI(pressureAt(reading.value), shown, {}));
    change({ barometer: { typed, example: exampleBarometer, unit: shown, shown }, fromElevation: true });
    return null;
  };

  const blankElevation: Entry = {
    typed: null,
    example: elevationField.start,
    unit: kinds.altitude[system],
    shown: kinds.altitude[system],
  };
  return (
    <>
      <button type="button" class="set" popovertarget="barometer-setting">
        <span class="roomy">Barometer </span>
        <span class={`chip ${around.barometer.isExample ? "" : "is-set"}`}>
          {around.barometer.isExample && <i>e.g. </i>}
          {value} {unitLabel(unit)}
        </span>
      </button>
      <label class="set units">
        <span class="hidden">Units</span>
        <select
          value={system}
          onChange={(event) => changeSystem(event.currentTarget.value === "us" ? "us" : "metric")}
        >
          <option value="metric">SI</option>
          <option value="us">US</option>
        </select>
      </label>
      <div id="barometer-setting" popover="auto" class="sheet pop" role="dialog" aria-label="Barometer">
        <p class="sub">The barometer where the engine stands</p>
        <FieldRow
          id="head-station"
          field={barometerField}
          help={stationHelp}
          entry={station ?? barometer}
          isExample={barometer.typed === null && station?.typed == null}
          messages={messages.station}
          around={around}
          onEntry={enterStation}
        />
        <FieldRow
          id="head-elevation"
          field={elevationField}
          help={elevationHelp}
          entry={elevation ?? blankElevation}
          isExample={elevation === null}
          messages={messages.elevation}
          around={around}
          onEntry={enterElevation}
        />
        {fromElevation && (
          <p class="msg">
            The barometer stands at {value} {unitLabel(unit)}, worked out from the elevation. A reading on the
            spot is better.
          </p>
        )}
        {isGuest && (
          <p class="msg" role="status">
            Barometer and units on this page come from the link. Yours are kept.{" "}
            <button type="button" class="btn quiet" onClick={() => keep(settings.get())}>
              Make these mine
            </button>
            <button type="button" class="btn quiet" onClick={() => visiting.set(null)}>
              Use mine here
            </button>
          </p>
        )}
        <button type="button" class="btn" popovertarget="barometer-setting" popovertargetaction="hide">
          Close
        </button>
      </div>
    </>
  );
}
