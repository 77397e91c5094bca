// The shape of a file of orders. All of it is private: not one field is marked for the store.
import { z } from "zod";

const text = (expected: string) => z.string({ error: expected }).min(1, expected);

export const orderSchema = z.strictObject({
  item: text("the title of what is ordered, like Stall price ladder"),
  variant: text("the variant, like slate").optional(),
  count: text("how many, like 2").optional(),
  saying: text("the words on it, like Tomatoes / Beans").optional(),
  due: text("the day it is due, like 2026-12-05"),
  approved: z.enum(["yes", "no"]),
  price: text("the price agreed for one, like 64.00"),
  notes: text("notes for the shop").optional(),
});

/** Orders by their number or the buyer's initials. */
export const ordersSchema = z.record(z.string(), orderSchema);
