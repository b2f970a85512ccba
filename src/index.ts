/** The engine's one door. */
export * from "./problem";
export { sentence } from "./words";
export * from "./length";
export * from "./chart/model";
export { placeName, placeSpan, readPlace } from "./chart/places";
export * from "./chart/cell";
export * from "./chart/size-label";
export {
  chartFrom,
  chartSource,
  readChartCells,
  type ChartRole,
  type ChartSource,
  type FabricChartOptions,
  type MeasureChartOptions,
} from "./chart/cells";
export { bodyMeasure, readBodyCells, readMeasureArgument, readOneBody } from "./chart/cells-body";
export { chooseChart, nearestCharts, type PlaceMeasure } from "./chart/cells-choose";
export { readNapCell, readWidthCell, type ClothWidth } from "./chart/cells-fabric";
export { chartsOf, type SheetChart, type SheetRow } from "./chart/cells-measure";
export { namesText } from "./chart/cells-names";
export * from "./sheet/plan";
export { fabricWidth, widthChange, type FabricWidthOptions, type WidthChange } from "./fabric/fabric-width";
export { extraYardage, type ExtraYardage } from "./fabric/extra-yardage";
export * from "./sheet/names";
export * from "./sheet/chart-sheet";
export * from "./sheet/chart-text";
export * from "./sheet/chart-index";
export { refusalSentence, type WriteRefusal, type WriteRefusalCode, type WriteRefusals } from "./words/refusals";
export { allCautions, cautionLine, childCautions, isChildsGarment, type Caution } from "./project/cautions";
export { hasDetails } from "./project/details";
export { salePrice } from "./project/sale-price";
export { shopList, shopListCells, type ShopRow } from "./project/shop-list";
export type { ShopCell } from "./project/shop-rows";
export { paneWords } from "./words/pane";
