/** The engine's one door. */
export * from "./problem";
export { sentence } from "./words";
export * from "./length";
export * from "./chart/model";
export * from "./sheet/plan";
