// The six sides and three axes of a space: an item (x right, y back, z up) or a panel seen from its good side.

export type Axis = "x" | "y" | "z";
export const axes: readonly Axis[] = ["x", "y", "z"];

export type Side = "left" | "right" | "front" | "back" | "bottom" | "top";
export const sides: readonly Side[] = ["left", "right", "front", "back", "bottom", "top"];

/** The axis a side closes. */
export const axisOf: Readonly<Record<Side, Axis>> = {
  left: "x",
  right: "x",
  front: "y",
  back: "y",
  bottom: "z",
  top: "z",
};

/** Whether the side is the far one along its axis. */
export const isFar = (side: Side): boolean => side === "right" || side === "back" || side === "top";

export const opposite: Readonly<Record<Side, Side>> = {
  left: "right",
  right: "left",
  front: "back",
  back: "front",
  bottom: "top",
  top: "bottom",
};

/** The side at the near (low) or far (high) end of an axis. */
export const sideOf = (axis: Axis, far: boolean): Side =>
  axis === "x" ? (far ? "right" : "left") : axis === "y" ? (far ? "back" : "front") : far ? "top" : "bottom";
