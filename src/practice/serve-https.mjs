/** `npm run serve:https`: serves dist/ on https://localhost:3000 for Excel on this machine. */
import { launch } from "./launch.mjs";

const { serveForExcel } = await launch("https-server");
await serveForExcel(Number(process.env.PORT ?? 3000));
