// The cutting plan: each board as it lies, with its strips told in words.
import type { VNode } from "preact";
import type { CuttingSheet } from "../../src/leaves/cutting-sheet.ts";
import { Figure } from "./figure.tsx";

export const BoardCuts = ({ of }: { of: CuttingSheet }): VNode => (
  <>
    <p>
      Sizes in inches. Each saw cut takes {of.kerf}. Cut from the left end of each board; what is crossed out is trimmed
      off or left over.
    </p>
    <ol class="boards">
      {of.boards.map((board) => (
        <li>
          <h3>
            <span class="tick" aria-hidden="true" />
            {board.name}: {board.stock}
          </h3>
          <Figure of={board.picture} name="board" />
          {board.first ? <p>{board.first}</p> : null}
          <ol class="strips">
            {board.strips.map((strip) => (
              <li>{strip}</li>
            ))}
          </ol>
        </li>
      ))}
    </ol>
  </>
);
