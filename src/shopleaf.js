#!/usr/bin/env node
// The command `shopleaf`: lets Node run this project's TypeScript from any folder, then hands over to src/site/cli.ts.
import { fileURLToPath } from "node:url";

const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Shopleaf needs Node 20.19 or newer; this is ${process.versions.node}.`);
  process.exit(2);
}

const { register } = await import("tsx/esm/api");
register({ tsconfig: fileURLToPath(new URL("../tsconfig.json", import.meta.url)) });
const { cli } = await import("./site/cli.ts");
process.exitCode = await cli(process.argv.slice(2));
