import type { VNode } from "preact";
import { renderToString } from "preact-render-to-string";

export const narrow = 1;
export const wide = 0;

/** The two drawings of a picture as markup, the wide one first. */
export function drawings(picture: VNode | false | null): string[] {
  return (picture ? renderToString(picture) : "").match(/<svg[\s\S]*?<\/svg>/g) ?? [];
}

export interface TextBox {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  readonly size: number;
}

const attribute = (tag: string, name: string) => tag.match(new RegExp(`[ ]${name}="([^"]*)"`))?.[1];

/** Where text stands, taking every glyph for 0.46 em: the mean of the text face, measured over English prose. */
export function texts(svg: string): TextBox[] {
  const font = Number(attribute(svg, "font-size"));
  return [...svg.matchAll(/<text([^>]*)>([\s\S]*?)<\/text>/g)].flatMap(([, tag = "", inner = ""]) => {
    const text = inner.replace(/<[^>]*>/g, "");
    if (!text) return [];
    const size = Number(attribute(inner, "font-size") ?? font);
    const w = text.length * 0.46 * size;
    const look = attribute(tag, "class") ?? "";
    const at = Number(attribute(tag, "x"));
    const x = look.includes("middle") ? at - w / 2 : look.includes("end") ? at - w : at;
    return [{ text, x, y: Number(attribute(tag, "y")) - 0.75 * size, w, h: 0.8 * size, size }];
  });
}

/** Pairs of texts that cover one another. */
export function collisions(svg: string): string[] {
  const boxes = texts(svg);
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h)
      .map((b) => `${a.text} / ${b.text}`),
  );
}

/** Markup that a browser could not draw. */
export const broken = (svg: string): string | undefined =>
  svg.match(/[^<]{0,40}(NaN|Infinity|undefined|\de[+-]?\d)[^>]{0,20}/)?.[0];

/** The ends of a path of relative straight pieces. */
export function walk(d: string): [number, number][] {
  let [x, y] = [0, 0];
  return [...d.matchAll(/([Ml])(-?[\d.]+) (-?[\d.]+)/g)].map(([, command, dx, dy]): [number, number] => {
    [x, y] = command === "M" ? [Number(dx), Number(dy)] : [x + Number(dx), y + Number(dy)];
    return [x, y];
  });
}

/** All that the paths of a drawing reach, in the units of its view box; an arc counts with its ends. */
export function reach(svg: string): [x: number, y: number][] {
  return [...svg.matchAll(/<path[^>]* d="([^"]*)"/g)].flatMap(([, d = ""]) => {
    let [x, y] = [0, 0];
    let [startX, startY] = [0, 0];
    return [...d.matchAll(/([a-z])([^a-z]*)/gi)].flatMap(([, command = "", rest = ""]) => {
      const numbers = (rest.match(/-?\d*\.?\d+/g) ?? []).map(Number);
      const size = { h: 1, v: 1, a: 7, z: 0 }[command.toLowerCase()] ?? 2;
      const steps = size
        ? Array.from({ length: numbers.length / size }, (_, i) => numbers.slice(i * size, (i + 1) * size))
        : [[]];
      const isFar = command === command.toUpperCase();
      return steps.map((step): [number, number] => {
        const [dx = 0, dy = 0] =
          { h: [step[0]], v: [undefined, step[0]] }[command.toLowerCase()] ?? step.slice(-2);
        if (command === "z") [x, y] = [startX, startY];
        else if (command === "H") x = dx;
        else if (command === "V") y = dy;
        else [x, y] = isFar ? [dx, dy] : [x + dx, y + dy];
        if (command.toLowerCase() === "m") [startX, startY] = [x, y];
        return [x, y];
      });
    });
  });
}
