import { describe, expect, it } from "vitest";
import { projectNotions } from "../../src/project/project-notions";
import { sentence } from "../../src/words";

const read = (...rows: Parameters<typeof projectNotions>[0]) => {
  const found = projectNotions(rows);
  if (!found.ok) throw new Error(sentence(found.problem));
  return found.value;
};

describe("projectNotions", () => {
  it("reads any column headed Notions, below a title, and leaves projects without any out", () => {
    const found = read(
      ["My projects"],
      ["Status", "Project", "NOTIONS"],
      ["planned", "Camp shirt", "six 1/2 in buttons, thread"],
      ["planned", "Wrap skirt", ""],
      ["finished", "Pinafore", "two 7/8 in buttons"],
      ["fabric bought", "", "20 cm zip"],
    );
    expect(found.map(({ project, wanted }) => [project, wanted])).toEqual([
      ["Camp shirt", true],
      ["Pinafore", false],
      ["row 4", true],
    ]);
    expect(found[0]!.texts).toEqual(["six 1/2 in buttons, thread"]);
  });
  it("puts the rows of one project together, and knows when one only repeats another", () => {
    const [trousers, gown] = read(
      ["Project", "Notions", "Status"],
      ["Trousers", "20 cm zip", "finished"],
      ["Gown", "hook", "planned"],
      ["trousers ", "thread", "planned"],
      ["Gown", "Hook", "planned"],
    );
    expect(trousers).toMatchObject({
      texts: ["20 cm zip", "thread"],
      wanted: true,
      status: "planned",
      repeated: false,
    });
    expect(gown).toMatchObject({ texts: ["hook", "Hook"], repeated: true });
  });
  it("keeps an error as a line of its own", () => {
    expect(read(["Project", "Notions"], ["Gown", { error: "#REF!" }])[0]!.texts).toEqual(["#REF!"]);
  });
  it("refuses a list without the heading", () => {
    const found = projectNotions([["Project", "Status"], ["Gown", "planned"]]); // prettier-ignore
    expect(found.ok ? "" : sentence(found.problem)).toContain("Notions");
  });
});
