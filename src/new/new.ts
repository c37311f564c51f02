// npm run new <lesson|calculator|relation|example> <id>
import { join } from "node:path";
import { kinds, Refusal, scaffold } from "./scaffold.ts";

try {
  const written = scaffold(process.argv.slice(2), join(import.meta.dirname, "../.."));
  console.log(written.join("\n"));
  console.log("\nEvery line in them is an example. DEVELOPERS.md says what each file has to hold.");
} catch (error) {
  if (!(error instanceof Refusal)) throw error;
  console.error(`${error.message}\n\nnpm run new <${kinds.join("|")}> <id>`);
  process.exitCode = 1;
}
