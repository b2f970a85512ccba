export * from "./length";
export * from "./units";
export * from "./read";
export * from "./format";
export * from "./round-up";
