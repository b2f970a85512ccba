/** Makes the starter workbook and writes it to the file that is named. */
import { launch } from "./launch.mjs";

const { saveStarter } = await launch("starter");
await saveStarter(process.argv[2]);
