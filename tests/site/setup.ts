import type { TestProject } from "vitest/node";
import { dist } from "./dist.ts";
import { launchBrowser } from "./launch-browser.ts";
import { serve } from "./serve.ts";

declare module "vitest" {
  interface ProvidedContext {
    address: string;
    browser: string;
  }
}

/** One server and one browser for all browser tests. */
export default async function setup({ provide }: TestProject) {
  const [site, browser] = await Promise.all([serve(dist), launchBrowser()]);
  provide("address", site.address);
  provide("browser", browser.wsEndpoint());
  return async () => {
    site.stop();
    await browser.close();
  };
}
