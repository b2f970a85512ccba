/** The text of a PDF with its places on the page. The library is loaded when the first PDF is opened, from our own address. */
import { getDocument, GlobalWorkerOptions } from "pdfjs-dist";
import { pagesWithCharts, paneWords, pdfText, type PdfPiece } from "../../src/index";

const words = paneWords.chart;
/** A printed book would take minutes; its charts stand on the first pages. */
const MOST_PAGES = 60;

/** The text of the pages with charts, or the sentence that says why there is none. */
export type PdfReading =
  | { readonly ok: true; readonly text: string; readonly note: string }
  | { readonly ok: false; readonly message: string };

export async function readPdf(bytes: Uint8Array, name: string): Promise<PdfReading> {
  GlobalWorkerOptions.workerSrc = new URL("pdfjs-dist/build/pdf.worker.min.mjs", import.meta.url).href;
  const loading = getDocument({ data: bytes, isEvalSupported: false, disableFontFace: true, verbosity: 0 });
  try {
    const document = await loading.promise;
    const pages: PdfPiece[][] = [];
    for (let number = 1; number <= Math.min(document.numPages, MOST_PAGES); number++) {
      const page = await document.getPage(number);
      const { items } = await page.getTextContent();
      pages.push(items.flatMap((item) => ("str" in item && item.str.trim() !== "" ? [placed(item)] : [])));
      page.cleanup();
    }
    if (pages.every((page) => page.length === 0)) return { ok: false, message: words.scannedPdf(name) };
    const withCharts = pagesWithCharts(pages);
    if (withCharts.length === 0) return { ok: false, message: words.noChartInPdf(name, pages.length) };
    return { ok: true, text: pdfText(pages), note: words.pdfPages(withCharts.join(", ")) };
  } catch (error) {
    const locked = error instanceof Error && error.name === "PasswordException";
    return { ok: false, message: locked ? words.lockedPdf(name) : words.brokenPdf(name) };
  } finally {
    await loading.destroy();
  }
}

/** Places in points from the page's bottom left: PDF counts upward. */
function placed({ str, transform, width }: { str: string; transform: readonly number[]; width: number }): PdfPiece {
  return { text: str, x: transform[4]!, y: transform[5]!, width };
}
