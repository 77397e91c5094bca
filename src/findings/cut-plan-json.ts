// A yard list -> the keys cutPlan and yardList of the worked-out item's JSON. Lengths in inches, money as text.
import { inches, type Length } from "../units/length.ts";
import { formatMoney } from "../units/money.ts";
import type { PlannedBoard } from "./board-plan.ts";
import type { YardList } from "./yard-list.ts";

const plain = (value: Length): number => Number(inches(value).toFixed(12));

const boardJson = ({ number, board, stock, own, width, order, strips, endLoss }: PlannedBoard) => ({
  number,
  board: board.name,
  length: plain(stock.length),
  width: plain(width),
  own,
  cost: formatMoney(stock.price),
  order,
  endLoss: plain(endLoss),
  pieces: strips.flatMap(({ pieces }) =>
    pieces.map((piece) => ({
      mark: piece.mark,
      length: plain(piece.length),
      width: plain(piece.width),
      at: plain(piece.at),
      across: plain(piece.across),
      turned: piece.turned,
      flipped: piece.flipped,
    })),
  ),
});

/** `at` counts from the board's fresh end, where the end loss is off; both places are those of a piece's square blank. */
export const cutPlanJson = ({
  plan,
  proof,
  boards,
  own,
  fasteners,
  finishes,
  fittings,
  ropes,
  glues,
  cost,
}: YardList) => ({
  cutPlan: {
    boards: plan.map(boardJson),
    cost: formatMoney(proof.cost),
    lowerBound: formatMoney(proof.lowerBound),
    proven: proof.proven,
  },
  yardList: {
    boards: boards.map(({ board, stock, count, cost }) => ({
      board: board.name,
      length: plain(stock.length),
      count,
      each: formatMoney(stock.price),
      cost: formatMoney(cost),
      priced: stock.priced,
    })),
    own: own.map(({ board, length, width, count }) => ({
      board: board.name,
      length: plain(length),
      width: plain(width),
      count,
    })),
    fasteners: fasteners.map(({ fastener, count, packs, cost }) => ({
      name: fastener.name,
      count,
      packs,
      cost: formatMoney(cost),
      priced: fastener.pack.priced,
    })),
    finishes: finishes.map(({ finish, gallons, tins, cost }) => ({
      name: finish.name,
      gallons: Number(gallons.toFixed(12)),
      tins,
      cost: formatMoney(cost),
      priced: finish.tin.priced,
    })),
    fittings: fittings.map(({ fitting, count, cost }) => ({
      name: fitting.name,
      count,
      cost: formatMoney(cost),
      priced: fitting.priced,
    })),
    ropes: ropes.map(({ rope, buy, cost }) => ({
      name: rope.name,
      length: plain(buy),
      cost: formatMoney(cost),
      priced: rope.priced,
    })),
    glues,
    cost: formatMoney(cost),
  },
});
