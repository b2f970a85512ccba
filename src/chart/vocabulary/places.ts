/**
 * Labels for places in the eight languages that patterns are printed in, as they stand on envelopes and in magazines.
 * Common practice, no source; the ids follow ISO 8559-1 terms where they exist (the terms are from memory).
 *
 * One line for each place: its id, whose own English words are its first label, its span in inches, its other labels.
 * Words such as "circumference" or "tour de" (see `NOISE` in src/chart/places.ts) are left out of a label before it is
 * looked up, and so they are left out here. A sign after a label stands for more of them (see `ENDINGS`): hip+ is hip and
 * hips, hüft~ is hüft, hüftumfang and hüftweite, heup= is heup, heupomvang and heupwijdte.
 * A span holds babies and the largest printed sizes, body and finished; it only serves to tell inches from centimetres.
 */
export const PLACES = `
bust+ 15-64 breast, bust line, bustline, B, oberweite, OW, brust~, BU, buste, busto, seno, petto, poitrine, pecho, bovenwijdte, borst=, BW, biust, biustu, w biuście, peito
highBust 13-64 upper bust, overbust, above bust, HB, oberbrust~, brust oben, dessus poitrine, haut poitrine, poitrine haute, haut buste, busto alto, contorno alto pecho, pecho alto, sobre pecho, sopra seno, torace alto, bovenborst, hoge buste, nad biustem, alto busto, busto superior
underbust 12-60 under bust, below bust, rib cage, ribcage, UB, unterbrust~, UBU, sous poitrine, dessous poitrine, bajo pecho, bajo busto, sottoseno, sotto seno, onderborst=, onderbuste, pod biustem, sob busto, abaixo busto, sub busto
upperChest 13-64
chest+ 15-64 thorax, torace, tórax, klatka piersiowa, klatki piersiowej, brustkorb, chest line
waist+ 14-62 waistline, waist line, natural waist, true waist, W, taille=, taillen~, taillenlinie, TU, cintura, vita, girovita, punto vita, talia, talii, w talii, pas, w pasie, pasa
lowWaist 13-66 lower waist, dropped waist, taille basse, cintura baja, vita bassa, lage taille, cintura baixa
highHip+ 13-66 upper hip+, abdomen, hüfte oben, hochhüfte, bauch~, petites hanches, hanches hautes, cadera alta, fianchi alti, hoge heup, anca alta, brzuch
hip+ 13-72 hipline, hip line, low hip, lower hip, seat, H, hüfte, hüften, hüft~, HU, HW, gesäß~, hanche+, bassin, cadera+, fianchi, fianco, bacino, heup=, heupen, biodra, bioder, w biodrach, quadril, quadris, anca+
backWaistLength 5-24 back waist, back neck to waist, neck to waist, nape to waist, back waist neck to waist, back length neck to waist, center back to waist, centre back neck to waist, back neck to waist length, nape to waist length, BWL, back length to waist, neck to waist back, back bodice length, rückenlänge bis taille, rückenlänge bis zur taille, taillenlänge hinten, nacken bis taille, longueur dos taille, longueur nuque taille, nuque taille, encolure taille, longueur taille nuque, largo talle espalda, talle espalda, largo espalda hasta cintura, talle trasero, lunghezza vita dietro, lunghezza dietro vita, lunghezza corpino dietro, ruglengte tot taille, nek tot taille, długość pleców do talii, kark talia, costas cintura, comprimento costas até cintura, altura costas cintura, dos taille, taille dos, longueur taille dos, dos encolure taille, encolure dos taille, nuque taille dos
backLength 5-64 center back length, centre back length, CB length, back length from base of neck, back length base of neck, back length from neck to hem, nape to hem
frontWaistLength 5-26 front waist, front neck to waist, shoulder to waist, shoulder to waist front, front bodice length, vordere taillenlänge, vordere länge, vorderlänge, VL, taillenlänge vorne, taillenlänge vorn, longueur taille devant, longueur devant taille, talle delantero, largo talle delantero, lunghezza vita davanti, voorlengte, voorlengte tot taille, długość przodu, talle frente, comprimento frente cintura, altura frente
frontLength 5-64 center front length, centre front length, vordere länge kleid, longueur devant, largo delantero, lunghezza davanti, comprimento frente
neck 7-27 collar, neckband, neck base, collar size, N, hals~, hals=, kragenweite, HA, cou, encolure, col, cuello, collo, girocollo, nek, szyja, szyi, kołnierzyk, kark, pescoço, colarinho
shoulder+ 1.5-50 shoulder length, shoulder width, shoulder seam, single shoulder, schulter, schultern, schulterbreite, schulterlänge, SB, épaule+, longueur épaule, largeur épaule+, carrure épaules, hombro+, largo hombro, ancho hombro+, spalla, spalle, lunghezza spalla, larghezza spalla, larghezza spalle, schouder+, schouderbreedte, schouderlengte, ramię, ramiona, szerokość ramion, długość ramienia, ombro+, largura ombro+, comprimento ombro
crossBack 5-26 cross back width, back width, across back, rückenbreite, RB, carrure dos, largeur dos, ancho espalda, larghezza dorso, larghezza schiena, larghezza spalle dietro, rugbreedte, szerokość pleców, largura costas, carrure
crossFront 5-26 across front, across chest, front width, chest width front, brustbreite, carrure devant, largeur devant, ancho delantero, ancho pecho, larghezza davanti, larghezza torace, borstbreedte, szerokość przodu, largura frente
upperArm+ 4-30 bicep+, top arm, sleeve width, oberarm~, OA, bras, haut bras, biceps bras, brazo, parte superior brazo, braccio, bicipite, bovenarm=, ramienia, braço
elbow+ 4-24 ellenbogen, ellbogen, coude, codo, gomito, elleboog, łokieć, cotovelo
wrist+ 3-18 wrist width, handgelenk~, HG, poignet, muñeca, polso, pols=, nadgarstek, nadgarstka, pulso, punho
armhole 4-34 armscye, armloch, armausschnitt, emmanchure, sisa, giromanica, armsgat, pacha, cava
sleeveLength 3-42 sleeve+, sleeve inseam, SL, ärmellänge, ÄL, longueur manche+, manche, largo manga+, manga, lunghezza manica, manica, lunghezza maniche, mouwlengte, mouw, długość rękawa, rękaw, comprimento manga
armLength 3-42 shoulder to wrist, armlänge, longueur bras, largo brazo, lunghezza braccio, armlengte, długość ręki, comprimento braço
thigh+ 7-50 upper leg, oberschenkel~, cuisse+, muslo+, coscia, cosce, dij=, bovenbeen, udo, uda, coxa+
knee+ 5-34 knie~, knie=, genou, genoux, rodilla, ginocchio, kolano, kolana, joelho
calf 5-30 calves, wade, waden~, mollet+, pantorrilla, gemelo, polpaccio, kuit=, łydka, łydki, panturrilha
ankle+ 4-24 fessel~, knöchel, cheville, tobillo, caviglia, enkel, kostka, kostki, tornozelo
head+ 11-27 head size, kopf~, KU, tête, cabeza, testa, hoofd=, głowa, głowy, cabeça
hand 4-14 hand span, palm, mano, dłoń, mão
height+ 15-84 stature, körpergröße, körperhöhe, KH, KG, hauteur, stature hauteur, taille enfant, taille debout, hauteur totale, estatura, altura, altezza, statura, lengte, lichaamslengte, wzrost, altura corporal
insideLeg+ 4-42 inseam, inseam length, inside leg length, inner leg, inner leg length, crotch to floor, schrittlänge, innenbeinlänge, innere beinlänge, beinlänge innen, schritthöhe, entrejambe, longueur entrejambe, intérieur jambe, longueur intérieure jambe, entre jambes, entrepierna, tiro interior, largo entrepierna, interno gamba, lunghezza interno gamba, cavallo interno, binnenbeenlengte, binnenbeen, nogawka wewnętrzna, długość wewnętrzna nogawki, wewnętrzna długość nogawki, entreperna+, comprimento entrepernas
outsideLeg 5-52 outseam, outside leg length, outer leg, outer leg length, side length, side seam, side seam length, waist to floor, waist to ankle, pants side length, pant length, pants length, trouser length, leg length, hosenlänge, seitliche hosenlänge, seitenlänge, seitliche länge, beinlänge, beinlänge außen, äußere beinlänge, longueur côté, longueur jambe, longueur pantalon, hauteur côté, largo lateral, largo pantalón, largo exterior, largo costado, lunghezza esterna, lunghezza fianco, lunghezza pantalone, lunghezza gamba, zijlengte, broeklengte, buitenbeenlengte, zijnaadlengte, długość boczna, długość nogawki, długość spodni, comprimento lateral, comprimento calça
crotchDepth 4-20 body rise, sitting height, seat depth, sitzhöhe, schritttiefe, leibhöhe, hauteur montant, montant, hauteur assise, hauteur entrejambe, tiro, altura tiro, altezza cavallo, cavallo, kruisdiepte, zithoogte, kruishoogte, głębokość krocza, wysokość siedzenia, altura gancho, gancho
crotchLength 8-50 crotch, schrittnaht, schrittnahtlänge, longueur fourche, fourche, enfourchure, longueur enfourchure, largo tiro, lunghezza cavallo, kruislengte, kruisnaad, długość krocza, comprimento gancho
frontRise 4-22 front crotch length, fourche devant, tiro delantero, cavallo davanti, gancho frente, leibhöhe vorne, voorkruis
backRise 4-26 back crotch length, tiro trasero, cavallo dietro, gancho costas, leibhöhe hinten, achterkruis, fourche dos
waistToHip 2-14 hip depth, hip height, hüfttiefe, hüfthöhe, hauteur hanches, hauteur bassin, altura cadera, alto cadera, largo cadera, altezza fianchi, altezza bacino, heuphoogte, heupdiepte, wysokość bioder, altura quadril, altura anca
waistToKnee 7-32 taille knie, kniehöhe, taille genou, hauteur genou, largo rodilla, altura rodilla, altezza ginocchio, kniehoogte, altura joelho
waistToHem 3-52 taille ourlet
torso 20-80 torso loop, trunk, body length loop, rumpfumfang, torse, tronco, tułów
neckToHem 5-64 shoulder to hem, length from shoulder, shoulder length to hem
bustDepth 3-18 shoulder to bust, shoulder to bust point, shoulder to apex, neck to bust, brusttiefe, BT, hauteur poitrine, profondeur poitrine, altura pecho, altura busto, altezza seno, altezza petto, borsthoogte, altura peito
bustPoints 2-14 bust point to bust point, bust span, apex to apex, brustpunktabstand, écart poitrine, separación pecho, distanza seno, borstafstand, distância busto
underarmLength 3-30 underarm sleeve length, underarm seam, unterarmlänge
skirtLength 4-52 rocklänge, longueur jupe, largo falda, lunghezza gonna, roklengte, długość spódnicy, comprimento saia
hemWidth 4-300 hem, lower edge, width lower edge, width at lower edge, bottom width, sweep, hem sweep, width at hem, lower edge width, bottom edge, skirt width, width at bottom, saum~, weite am saum, largeur bas, bas, largeur ourlet, ourlet, bajo, ancho bajo, ancho dobladillo, ruedo, bajo falda, orlo, larghezza orlo, fondo, larghezza fondo, zoom=, dół, szerokość dołu, obwód dołu, bainha, largura bainha, barra
legWidth 4-50 leg opening, leg hem, width each leg, width at leg, hosenweite, fußweite, beinweite, largeur bas jambe, bas jambe, bajo pierna, ancho bajo pierna, fondo gamba, larghezza fondo gamba, pijpwijdte, broekspijp, szerokość nogawki, boca, boca da perna
foot 3-16 foot length, fuß, fußlänge, pied, longueur pied, pie, piede, voet, stopa, pé
`;

/** The signs after a label, and the endings that each stands for. */
export const ENDINGS: Readonly<Record<string, readonly string[]>> = {
  "+": ["", "s"],
  "~": ["", "umfang", "weite"],
  "=": ["", "omvang", "wijdte"],
};

/**
 * Labels that say "back length": in a body chart they end at the waist, in a finished one at the hem.
 * Front length in the same way.
 */
export const BACK_LENGTHS = `back length, length back, back, rückenlänge, RL, rückenlänge RL, hintere länge, longueur dos, long dos, hauteur dos, longueur dans dos, largo espalda, longitud espalda, largo trasero, lunghezza dorso, lunghezza schiena, lunghezza dietro, ruglengte, rugl, achterlengte, długość pleców, długość tyłu, comprimento costas, comprimento costa, altura costas`;

/** Labels that mean the bust on a woman and the chest on a man or a child. */
export const BUST_OR_CHEST = `brust~, BU, petto, busto, poitrine, pecho, borst=, bovenwijdte, peito`;
