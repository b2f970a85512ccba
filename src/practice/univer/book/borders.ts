import { fail, HostCollection, HostObject } from "../../host/objects";
import type { Range } from "./range";

/** Excel's names for the edges of a range, and Univer's. */
const EDGES: Readonly<Record<string, string>> = {
  EdgeTop: "top",
  EdgeBottom: "bottom",
  EdgeLeft: "left",
  EdgeRight: "right",
  InsideHorizontal: "horizontal",
  InsideVertical: "vertical",
};
const LINES: Readonly<Record<string, number>> = { None: 0, Continuous: 1, Dot: 3, Dash: 4, Double: 7 };

/** `range.format.borders`: can be drawn; what is there already is not read back. */
export class RangeBorderCollection extends HostCollection<RangeBorder> {
  constructor(private readonly range: Range) {
    super();
  }
  all() {
    return Object.keys(EDGES).map((edge) => new RangeBorder(this.range, edge));
  }
}

class RangeBorder extends HostObject {
  readonly scalars = ["Color", "SideIndex", "Style"];
  private line = "Continuous";
  private colour = "#000000";
  constructor(
    private readonly range: Range,
    override readonly Id: string,
  ) {
    super();
  }
  get Name() {
    return this.Id;
  }
  get SideIndex() {
    return this.Id;
  }
  get Style() {
    return this.line;
  }
  set Style(name: string) {
    if (!(name in LINES)) fail("ApiNotFound", `border style ${name}`);
    this.line = name;
    this.draw();
  }
  get Color() {
    return this.colour;
  }
  set Color(colour: string) {
    this.colour = colour;
    this.draw();
  }
  private draw() {
    this.range.writable().setBorder(EDGES[this.Id] as never, LINES[this.line] as never, this.colour);
  }
}
