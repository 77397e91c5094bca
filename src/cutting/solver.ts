// The general solver, awaited once, and the settings under which it gives the same answer on every machine.
import module from "highs";

// Its types describe the CommonJS build, whose `default` is the loader; what Node loads here is the loader itself.
const load = module as unknown as typeof module.default;

export const solver = await load();

/** No words and a fixed seed; this build has one thread, and no limit is by clock. */
export const sameEverywhere = { output_flag: false, random_seed: 1 } as const;
