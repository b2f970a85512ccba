/** `npm start`: the practice workbook. PORT chooses the port to try first. */
import { launch } from "./launch.mjs";

const { start } = await launch("workbook-server");
await start(Number(process.env.PORT ?? 3000));
