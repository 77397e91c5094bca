// Prices from cost, overhead, profit and fees against worked examples of the usual rules.
import { describe } from "vitest";
import { priceThatNets, withOverhead, withProfit } from "../../src/findings/price.ts";
import { exact, zero } from "../../src/units/length.ts";
import { type Answer, given, type Published, published, testPublished } from "./published.ts";

function answer(row: Published): Answer {
  const of = (key: string) => exact(String(given(row, key)));
  if (row.id === "sell.price.fee")
    return priceThatNets(of("net"), { fee: of("pct"), fixed: of("fixed") }, zero).valueOf();
  const cost = withOverhead(of("material"), of("hours").mul(of("rate")), of("overhead"));
  return withProfit(cost, of("profit"), row.title.endsWith("as margin") ? "margin" : "markup").valueOf();
}

describe("selling", () => testPublished(published("selling"), answer));
