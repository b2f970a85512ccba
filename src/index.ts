/** The engine's one door. */
export * from "./problem";
export { sentence } from "./words";
export * from "./length";
export * from "./chart/model";
export { readCharts } from "./chart/read-charts";
export { pagesWithCharts, pdfText, readPdfText, type PdfPiece } from "./chart/read-pdf";
export { placeName, placeSpan, readPlace } from "./chart/places";
export * from "./chart/cell";
export * from "./chart/size-label";
export {
  chartFrom,
  chartSource,
  once,
  readChartCells,
  type ChartRole,
  type ChartSource,
  type FabricChartOptions,
  type MeasureChartOptions,
} from "./chart/cells";
export { bodyMeasure, readBodyCells, readBodyLines, readMeasureArgument, readOneBody } from "./chart/cells-body";
export { bodyMeasures, chooseChart, type PlaceMeasure } from "./chart/cells-choose";
export {
  fabricChartsOf,
  readNapCell,
  readWidthCell,
  widthUnitOf,
  type ClothWidth,
  type SheetFabric,
} from "./chart/cells-fabric";
export { chartsOf, type SheetChart, type SheetRow } from "./chart/cells-measure";
export { sizeColumn } from "./chart/cells-column";
export { namesText } from "./chart/cells-names";
export * from "./sheet/plan";
export { fabricWidth, widthChange, type FabricWidthOptions, type WidthChange } from "./fabric/fabric-width";
export { extraYardage, type ExtraYardage } from "./fabric/extra-yardage";
export * from "./sheet/names";
export { tablesOf } from "./sheet/references";
export * from "./sheet/chart-sheet";
export * from "./sheet/chart-text";
export * from "./sheet/chart-index";
export * from "./sheet/fit-formulas";
export * from "./sheet/pieces-sheet";
export * from "./sheet/fabric-formulas";
export * from "./sheet/examples";
export { refusalSentence, type WriteRefusal, type WriteRefusalCode, type WriteRefusals } from "./words/refusals";
export { allCautions, cautionLine, childCautions, isChildsGarment, type Caution } from "./project/cautions";
export { hasDetails } from "./project/details";
export { salePrice } from "./project/sale-price";
export { shopList, shopListCells, type ShopRow } from "./project/shop-list";
export type { ShopCell } from "./project/shop-rows";
export { paneWords } from "./words/pane";
export { capital } from "./words/sentences";
export * from "./sheet/tracker";
export * from "./sheet/trackers/all";
export {
  DATE_LABEL,
  dateCells,
  GUIDE_HEADING,
  MEASUREMENTS_TABLE,
  TAPE_HEADING,
  personColumn,
  measurementsSheet,
} from "./sheet/trackers/measurements";
export { SHOP_CELL, SHOP_HEADINGS, SHOPPING_SHEET } from "./sheet/trackers/shopping-list";
export { readShopList, shopCopySheet } from "./sheet/trackers/shop-copy";
export { notionsSheet } from "./sheet/trackers/notions-copy";
export { projectNotions, type NotionsOfProject } from "./project/project-notions";
export { CAUTIONS_SHEET } from "./sheet/trackers/cautions";
export * from "./sheet/keep-values";
export { sameShown } from "./sheet/kept-rows";
export { matchInRow, readMatchRule, sizeMatch, type MatchRule, type SizeMatch } from "./fit/size-match";
export { readPlaceCell, sizeMatchAmong, type TableMatch } from "./fit/size-match-tables";
export { sizeByPlace, type PlaceSize } from "./fit/size-by-place";
export { totalEase } from "./fit/ease";
export { envelopes, readSizeGroup, type SizeGroup } from "./fit/envelope";
export { bustAdjust, type BustAdjustment, type BustOptions, type HighBustRow } from "./fit/bust-adjust";
export { blend, type BlendRow } from "./fit/blend";
export { cutNote, noteCutter } from "./fit/cut-note";
export { cutSize, sizeCutter, type CutSize } from "./fit/cut-size";
export { easeParts, type EaseParts } from "./fit/ease-parts";
export { easePlan, type EaseRow } from "./fit/ease-plan";
export { chooseTable, finishedFor, type TableQuestion } from "./fit/choose-table";
export { figureType, type FigureType, type FigureTypes, type NamedChart } from "./fit/figure-type";
export { fitPicture, type FitPicture, type PictureBand, type PicturePlace } from "./fit/fit-picture";
export { easeBand, fitTerm, type TermOptions } from "./fit/fit-term";
export type { FitOptions } from "./fit/fitting";
export { garments, type Garment } from "./fit/garments";
export { suggestedGarment } from "./fit/suggest-garment";
export { tapeFigures, type TapeFigure, type TapeLine } from "./fit/measuring-figure";
export { measuringGuide, type TapeGuide } from "./fit/measuring-guide";
export { garmentNames, readGarment } from "./fit/read-garment";
export { readSettings } from "./fit/read-settings";
export { noSettings, TERMS, type Settings, type Term } from "./fit/settings";
export { knitCheck, stretch } from "./fit/stretch";
export { columnsOfSize, printedYardage, type Yardage, type YardageQuestion } from "./fabric/yardage";
export { tags } from "./project/tags";
export { chartIndex, type IndexCell, type NamedTable } from "./chart/chart-index";
export { START_SHEET, starterCharts, starterSheets, starterWorkbook, type StarterChart } from "./sheet/starter";
export { groupsNote, type GroupsNote } from "./fit/groups-note";
export { cellTries, cuttingLayout } from "./fabric/layout/cutting-layout";
export { layoutSearch, type LayoutSearch } from "./fabric/layout/layout-search";
export type { Cloth, CutPiece, Effort, FabricPiece, Layout, NamedCloth, Placement, Point } from "./fabric/layout/types";
export { readPieces, type PiecesOfFabric } from "./fabric/pieces";
export { paperPieces, type PaperPiece, type PaperPieces } from "./fabric/paper-pieces";
export { formatOutline } from "./fabric/outline-text";
export {
  outlineFromWidths,
  widthsFromOutline,
  type HowShaped,
  type PieceToShape,
  type WidthAt,
} from "./fabric/widths-outline";
export { rememberedLayouts } from "./fabric/layout/remembered";
export { layoutPlanRows, type LayoutPlanRow } from "./fabric/layout-plan";
export {
  formatNotion,
  readNotions,
  totalNotions,
  type Notion,
  type NotionTotal,
  type NotionTotals,
  type ProjectNotions,
} from "./fabric/notions";
export { layoutPicture, type LayoutPicture, type PicturePiece, type PictureZone } from "./fabric/layout/picture";
export { cuttingPlan, type CuttingPlan, type PlannedCloth } from "./fabric/layout/cutting-plan";
