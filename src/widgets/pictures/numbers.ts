/** Whether a number can stand on an axis: finite, and far from the ends of floating point. */
export const drawable = (v: number | undefined): v is number => v !== undefined && Math.abs(v) <= 1e15;

/** One decimal, which is what a drawing needs. */
export const r1 = (v: number): number => Math.round(v * 10) / 10 || 0;

/** The step of 1, 2 or 5 times a power of ten that cuts `span` into about `about` parts. */
export function niceStep(span: number, about: number): number {
  const power = 10 ** Math.floor(Math.log10(span / about));
  const lead = span / about / power;
  return (lead > 7 ? 10 : lead > 3.2 ? 5 : lead > 1.4 ? 2 : 1) * power;
}

/** A mark on an axis, as a number and as printed. */
export interface Mark {
  readonly value: number;
  readonly text: string;
}

/** The multiples of `niceStep` from `from` to `to`, printed with the decimals that the step needs, thousands apart. */
export function niceMarks(from: number, to: number, about: number): Mark[] {
  if (!(to > from) || !drawable(from) || !drawable(to)) return [];
  const step = niceStep(to - from, about);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-6));
  const grouped = Math.max(-from, to) >= 10_000;
  const marks: Mark[] = [];
  for (let i = Math.ceil(from / step - 1e-6); i <= to / step + 1e-6; i++) {
    const text = Math.abs(i * step).toFixed(i && decimals);
    marks.push({
      value: i * step,
      text: (i < 0 ? "−" : "") + (grouped ? text.replace(/\B(?=(\d{3})+$)/g, "\u202f") : text),
    });
  }
  return marks;
}

/** The least and the greatest, moved apart where they would be one: zero stays at the foot. */
export function spanOf(values: readonly number[]): [number, number] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const size = Math.max(-low, high);
  if (!drawable(size)) return [0, 1];
  if (high - low > 1e-9 * size && size > 1e-12) return [low, high];
  const apart = 0.1 * size;
  return size > 1e-12 ? [low - apart, high + apart] : [low, high + 1];
}
