/** `npm run demo`: the main job without a screen. */
import { launch } from "./launch.mjs";

const { demo } = await launch("main-job");
await demo();
