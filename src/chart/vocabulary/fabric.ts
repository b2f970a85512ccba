/** Words of fabric charts in eight languages. Common practice, no source. */

/** A part's id and its words, as plain words; "contrast 2" keeps its number. */
export const PARTS = `
main: main, main fabric, self, self fabric, shell, outer, outer fabric, fashion fabric, garment fabric, fabric, oberstoff, hauptstoff, stoff, tissu principal, tissu, tela principal, tela exterior, tela, tessuto principale, tessuto, stoffa, hoofdstof, bovenstof, stof, tkanina główna, tkanina, materiał, tecido principal, tecido
contrast: contrast, contrasting, contrast fabric, contrasting fabric, kontrast, kontraststoff, besatz, besatzstoff, contraste, tissu contrastant, tissu contraste, tela contraste, tela contrastante, tessuto contrasto, contrasto, contraststof, tkanina kontrastowa, tecido contrastante
lining: lining, lining fabric, futter, futterstoff, doublure, forro, fodera, voering, voeringstof, podszewka
interfacing: interfacing, fusible interfacing, fusible, einlage, vlieseline, bügeleinlage, entoilage, thermocollant, entretela, fliselina, teletta, rinforzo, tussenvoering, vlieselin, flizelina, wkład, entretela termocolante
underlining: underlining, interlining, zwischenfutter, triplure, entredoublure
ribbing: ribbing, rib, rib knit, cuffing, bündchen, bündchenstoff, bord côte, bord côtes, bords côtes, puño elástico, canalé, costina, boordstof, ściągacz, punho
trim: trim, trimming, lace, lace trim, edging, spitze, garnitur, garniture, dentelle, encaje, puntilla, pizzo, guarnizione, kant, koronka, renda, acabamento
elastic: elastic, gummiband, gummi, élastique, elástico, goma, elastico, elastiek, guma, gumka
binding: binding, bias binding, bias tape, bias, schrägband, biais, bies, sbieco, biaisband, lamówka, viés
piping: piping, paspel, passepoil, vivo, profilo, paspelband, wypustka
ribbon: ribbon, band, ruban, cinta, nastro, lint, wstążka, fita
batting: batting, wadding, padding, fleece wadding, vlies, molleton, ouatine, guata, ovatta, vulling, ocieplina, manta acrílica
pocketing: pocketing, pocket lining, pocket fabric, taschenfutter, taschenbeutel, tissu poche, forro bolsillo
`;

/** Words that may stand in a fabric row without naming a part. */
export const FABRIC_NOISE = `
  wide width widths breit breite br stoffbreite large largeur laize de en ancho anchura alto altezza larga larghezza breed
  breedte stofbreedte szer szerokość szerokości larg largura com of the for all size sizes fabric fabrics fabrik view
  views cotton denim linen wool silk jersey knit knits woven stretch leinen baumwolle yd yds yard yards m metre metres
  meter meters in inch inches cm ins lightweight medium weight mediumweight heavyweight light nap and with without or
  either dress top shirt skirt pants jacket blouse coat trousers shorts vest gown robe kleid rock hose bluse jacke jupe
  pantalon chemisier veste falda vestido pantalón blusa chaqueta gonna abito vestito pantaloni giacca jurk rok broek
  sukienka spódnica spodnie bluzka saia calça camisa tunic tunika pinafore apron camisole bodice nightgown pyjamas
  pajamas leggings hose each total about approx from to lengthwise stripes one way design striche required needed
  bei für fur pro mit per pour para con voor dla bij na su sur auf w tkaniny materiału material stoffs tissus gr grösse größe doppelt einfach liegend
  zuzycie zużycie benodigde benodigd stoffverbrauch verbrauch stoffbedarf bedarf consumo consumi occorrente necessaria necesaria necessario ilosc metrage métrage
  metraje quantity quantities amount yardage metreage needs stofverbruik materialverbrauch
  on doubled single layer strich richtung long short long sleeved sleeve each crosswise usable only fusible sew`;

export const VIEW_WORDS = `view views version versions style styles variation variations modell modelle model modele modeles modelo modelos
  modello modelli vista vistas ansicht ansichten variante varianten variantes variant wersja wersje versie versies
  versione versioni versao versoes fassung option options look`;

/** "All views", with the word for views left out. */
export const ALL_WORDS = `all every each alle tous toutes todas todos tutti tutte wszystkie both beide les las los i os as the sizes`;

export const NAP_WORDS = {
  either: [
    "with or without nap", "with and without nap", "with without nap", "w wo nap", "w w o nap", "nap optional", "with or w o nap",
    "mit oder ohne strich", "mit und ohne strich", "avec ou sans sens", "avec ou sans poil", "con o sin pelo", "con o sin sentido",
    "con o senza verso", "con o senza pelo", "met of zonder vleug", "met of zonder streek", "z wlosem lub bez", "com ou sem pelo", "com ou sem sentido",
  ],
  without: [
    "without nap", "w o nap", "wo nap", "no nap", "non nap", "without a nap", "ohne strich", "ohne strichrichtung", "sans sens", "sans poil", "sin pelo",
    "sin sentido", "sin direccion", "senza verso", "senza pelo", "zonder vleug", "zonder streek", "bez wlosa", "bez wlosu", "sem pelo", "sem sentido", "two way",
  ],
  with: [
    "with nap", "w nap", "with a nap", "mit strich", "mit strichrichtung", "avec sens", "avec poil", "con pelo", "con sentido", "con direccion", "con verso", "met vleug",
    "met streek", "z wlosem", "com pelo", "com sentido", "one way", "one way design", "napped", "nap",
  ],
} as const; // prettier-ignore

/** Rows of what else the pattern wants: read past without a word. */
export const NOTION_WORDS = `notions haberdashery kurzwaren zutaten mercerie fournitures merceria mercería fournituren pasmanteria dodatki aviamentos buttons
  button zipper zip thread needles needle snaps hooks hook buckle buckles knöpfe reißverschluss garn boutons boutonnière fermeture
  botones cremallera hilo bottoni cerniera filo knopen rits guziki zamek botões zíper`;
