import { describe, expect, it } from "vitest";
import { knownPlaces } from "../../src/chart/places";
import { garments } from "../../src/fit/garments";
import { measuringGuide } from "../../src/fit/measuring-guide";

describe("measuringGuide", () => {
  it("covers every place that a garment is cut by", () => {
    const covered = measuringGuide.map(({ place }) => place);
    for (const { frame, governs, girths } of garments)
      for (const place of [...frame, ...governs.flat(), ...girths]) expect(covered).toContain(place);
  });

  it("names only known places, each once, in whole sentences", () => {
    const places = measuringGuide.map(({ place }) => place);
    expect(new Set(places).size).toBe(places.length);
    for (const { place, where } of measuringGuide) {
      expect(knownPlaces()).toContain(place);
      expect(where).toMatch(/^[A-Z].+\.$/);
    }
  });

  it("says that three waists are in use", () => {
    const [says, ...ways] = measuringGuide.find(({ place }) => place === "waist")!.otherWays;
    expect(says).toMatch(/^Three waists are in use\. .*write down which:$/);
    expect(ways).toEqual([
      expect.stringMatching(/^a: half way .*hip bone/),
      expect.stringMatching(/^b: .*belt.*natural waist.*from memory/),
      expect.stringMatching(/^c: .*navel/),
    ]);
  });

  it("tells the high bust from the bust", () => {
    expect(measuringGuide.find(({ place }) => place === "highBust")?.otherWays[0]).toMatch(/above the fullness/);
  });

  // EN 13402-1 and ISO 8559-1 as far as read; the rest says that it wasn't.
  it("says how far each description can be trusted", () => {
    const status = Object.fromEntries(measuringGuide.map(({ place, standard, status }) => [place, [standard, status]]));
    expect(status).toMatchObject({
      bust: ["EN 13402-1", "read"],
      chest: ["EN 13402-1", "read"],
      neck: ["EN 13402-1", "read"],
      head: ["EN 13402-1", "read"],
      waist: ["ISO 8559-1", "read"],
      hip: ["ISO 8559-1", "from memory"],
      highBust: [null, "common practice, no source"],
    });
  });
});
