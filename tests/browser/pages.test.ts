// Every page of the demo's binder in a browser.
import { provePages } from "./every-page.ts";

provePages((name) => name.startsWith("binder/"));
