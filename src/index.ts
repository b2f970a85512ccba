/** The engine's one door. */
export * from "./problem";
export { sentence } from "./words";
export * from "./length";
export * from "./chart/model";
export { placeName, placeSpan, readPlace } from "./chart/places";
export * from "./chart/cell";
export * from "./chart/size-label";
export * from "./sheet/plan";
export { fabricWidth, widthChange, type FabricWidthOptions, type WidthChange } from "./fabric/fabric-width";
export { extraYardage, type ExtraYardage } from "./fabric/extra-yardage";
export * from "./sheet/names";
export * from "./sheet/chart-sheet";
export * from "./sheet/chart-index";
export { refusalSentence, type WriteRefusal, type WriteRefusalCode, type WriteRefusals } from "./words/refusals";
