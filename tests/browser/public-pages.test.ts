// Every page of the demo that isn't the binder's, in a browser: store, packs, guide and the first page.
import { provePages } from "./every-page.ts";

provePages((name) => !name.startsWith("binder/"));
