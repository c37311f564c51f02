import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Download } from "playwright-core";

/** What a page gave as a file. */
export async function textOf(download: Download): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "saved-"));
  try {
    const file = join(folder, "file");
    await download.saveAs(file);
    return await readFile(file, "utf8");
  } finally {
    await rm(folder, { recursive: true });
  }
}
