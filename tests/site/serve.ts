import { spawn } from "node:child_process";
import { join } from "node:path";

const program = join(import.meta.dirname, "../../src/serve.mjs");

/** Serves a built site as `npm start` does, and says where. */
export async function serve(folder: string): Promise<{ address: string; stop: () => void }> {
  const server = spawn(process.execPath, [program, folder], {
    env: { ...process.env, PORT: "4600" },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const address = await new Promise<string>((resolve, reject) => {
    let said = "";
    const hear = (chunk: Buffer) => {
      said += chunk.toString();
      const [found] = said.match(/http:\/\/localhost:\d+/) ?? [];
      if (found) resolve(found);
    };
    server.stdout.on("data", hear);
    server.stderr.on("data", hear);
    server.on("exit", () => reject(new Error(said)));
  });
  return { address, stop: () => server.kill() };
}
