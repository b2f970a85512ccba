/**
 * Labels for places in the eight languages that patterns are printed in, as they stand on envelopes and in magazines.
 * Common practice, no source; the ids follow ISO 8559-1 terms where they exist (the terms are from memory).
 *
 * One line for each place: its id, its span in inches, its labels. Words such as "circumference" or "tour de" (see
 * `NOISE` in src/chart/places.ts) are left out of a label before it is looked up, and so they are left out here.
 * A span holds babies and the largest printed sizes, body and finished; it only serves to tell inches from centimetres.
 */
export const PLACES = `
bust 15-64 bust, busts, breast, bust line, bustline, B, oberweite, OW, brust, brustumfang, brustweite, BU, buste, busto, seno, petto, poitrine, pecho, bovenwijdte, borst, borstomvang, borstwijdte, BW, biust, biustu, w biuście, peito
highBust 13-64 high bust, upper bust, overbust, above bust, HB, oberbrust, oberbrustumfang, oberbrustweite, brust oben, dessus poitrine, haut poitrine, poitrine haute, haut buste, busto alto, contorno alto pecho, pecho alto, sobre pecho, sopra seno, torace alto, bovenborst, hoge buste, nad biustem, alto busto, busto superior
underbust 12-60 underbust, under bust, below bust, rib cage, ribcage, UB, unterbrust, unterbrustumfang, unterbrustweite, UBU, sous poitrine, dessous poitrine, bajo pecho, bajo busto, sottoseno, sotto seno, onderborst, onderborstwijdte, onderbuste, pod biustem, sob busto, abaixo busto, sub busto
upperChest 13-64 upper chest
chest 15-64 chest, chests, thorax, torace, tórax, klatka piersiowa, klatki piersiowej, brustkorb, chest line
waist 14-62 waist, waists, waistline, waist line, natural waist, true waist, W, taille, taillen, taillenumfang, taillenweite, taillenlinie, tailleomvang, taillewijdte, TU, cintura, vita, girovita, punto vita, talia, talii, w talii, pas, w pasie, pasa
lowWaist 13-66 low waist, lower waist, dropped waist, taille basse, cintura baja, vita bassa, lage taille, cintura baixa
highHip 13-66 high hip, upper hip, high hips, upper hips, abdomen, hüfte oben, hochhüfte, bauch, bauchumfang, petites hanches, hanches hautes, cadera alta, fianchi alti, hoge heup, anca alta, brzuch
hip 13-72 hip, hips, hipline, hip line, full hips, low hip, lower hip, seat, H, hüfte, hüften, hüftumfang, hüftweite, HU, HW, gesäß, gesäßumfang, gesäßweite, hanche, hanches, bassin, cadera, caderas, fianchi, fianco, bacino, heup, heupen, heupomvang, heupwijdte, biodra, bioder, w biodrach, quadril, quadris, anca, ancas
backWaistLength 5-24 back waist length, back waist, back neck to waist, neck to waist, nape to waist, back waist neck to waist, back length neck to waist, center back to waist, centre back neck to waist, back neck to waist length, nape to waist length, BWL, back length to waist, neck to waist back, back bodice length, rückenlänge bis taille, rückenlänge bis zur taille, taillenlänge hinten, nacken bis taille, longueur dos taille, longueur taille dos, longueur nuque taille, nuque taille, encolure taille, dos encolure taille, dos encolure à taille, encolure dos taille, longueur taille nuque, dos taille, largo talle espalda, talle espalda, largo espalda hasta cintura, talle trasero, lunghezza vita dietro, lunghezza dietro vita, lunghezza corpino dietro, ruglengte tot taille, nek tot taille, długość pleców do talii, kark talia, costas cintura, comprimento costas até cintura, altura costas cintura
backLength 5-64 garment back length, back length garment, center back length, centre back length, CB length, back length from base of neck, back length base of neck, back length from neck to hem, nape to hem
frontWaistLength 5-26 front waist length, front waist, front neck to waist, shoulder to waist, shoulder to waist front, front bodice length, vordere taillenlänge, vordere länge, vorderlänge, vordere taillenlänge, VL, taillenlänge vorne, taillenlänge vorn, longueur taille devant, longueur devant taille, talle delantero, largo talle delantero, lunghezza vita davanti, voorlengte, voorlengte tot taille, długość przodu, talle frente, comprimento frente cintura, altura frente
frontLength 5-64 front length, center front length, centre front length, vordere länge kleid, longueur devant, largo delantero, lunghezza davanti, comprimento frente
neck 7-27 neck, collar, neckband, neck base, collar size, N, hals, halsumfang, halsweite, kragenweite, HA, cou, encolure, col, cuello, collo, girocollo, nek, halswijdte, halsomvang, szyja, szyi, kołnierzyk, kark, pescoço, colarinho
shoulder 1.5-50 shoulder, shoulders, shoulder length, shoulder width, shoulder seam, single shoulder, schulter, schultern, schulterbreite, schulterlänge, SB, épaule, épaules, longueur épaule, largeur épaule, largeur épaules, carrure épaules, hombro, hombros, largo hombro, ancho hombro, ancho hombros, spalla, spalle, lunghezza spalla, larghezza spalla, larghezza spalle, schouder, schouders, schouderbreedte, schouderlengte, ramię, ramiona, szerokość ramion, długość ramienia, ombro, ombros, largura ombro, largura ombros, comprimento ombro
crossBack 5-26 cross back, cross back width, back width, across back, rückenbreite, RB, carrure dos, largeur dos, carrure, ancho espalda, larghezza dorso, larghezza schiena, larghezza spalle dietro, rugbreedte, szerokość pleców, largura costas
crossFront 5-26 cross front, across front, across chest, front width, chest width front, brustbreite, carrure devant, largeur devant, ancho delantero, ancho pecho, larghezza davanti, larghezza torace, borstbreedte, szerokość przodu, largura frente
upperArm 4-30 upper arm, upper arms, bicep, biceps, top arm, sleeve width, oberarm, oberarmumfang, oberarmweite, OA, bras, haut bras, biceps bras, brazo, parte superior brazo, braccio, bicipite, bovenarm, bovenarmwijdte, bovenarmomvang, bovenarm wijdte, ramienia, braço, bíceps
elbow 4-24 elbow, elbows, ellenbogen, ellbogen, coude, codo, gomito, elleboog, łokieć, cotovelo
wrist 3-18 wrist, wrists, wrist width, handgelenk, handgelenkumfang, handgelenkweite, HG, poignet, muñeca, polso, pols, polsomvang, polswijdte, nadgarstek, nadgarstka, pulso, punho
armhole 4-34 armhole, armscye, armloch, armausschnitt, emmanchure, sisa, giromanica, armsgat, pacha, cava
sleeveLength 3-42 sleeve length, sleeve, sleeves, sleeve inseam, SL, ärmellänge, ÄL, armellänge, longueur manche, longueur manches, manche, largo manga, manga, largo mangas, lunghezza manica, manica, lunghezza maniche, mouwlengte, mouw, długość rękawa, rękaw, comprimento manga
armLength 3-42 arm length, shoulder to wrist, armlänge, longueur bras, largo brazo, lunghezza braccio, armlengte, długość ręki, comprimento braço
thigh 7-50 thigh, thighs, upper leg, oberschenkel, oberschenkelumfang, oberschenkelweite, cuisse, cuisses, muslo, muslos, coscia, cosce, dij, bovenbeen, dijomvang, udo, uda, coxa, coxas
knee 5-34 knee, knees, knie, knieumfang, knieweite, kniewijdte, genou, genoux, rodilla, ginocchio, kolano, kolana, joelho
calf 5-30 calf, calves, wade, waden, wadenumfang, wadenweite, mollet, mollets, pantorrilla, gemelo, polpaccio, kuit, kuitomvang, łydka, łydki, panturrilha
ankle 4-24 ankle, ankles, fessel, fesselweite, knöchel, cheville, tobillo, caviglia, enkel, kostka, kostki, tornozelo
head 11-27 head, heads, head size, kopf, kopfumfang, KU, tête, cabeza, testa, hoofd, hoofdomvang, głowa, głowy, cabeça
hand 4-14 hand, hand span, palm, mano, dłoń, mão
height 15-84 height, heights, body height, stature, körpergröße, körperhöhe, KH, KG, hauteur, stature hauteur, taille enfant, taille debout, hauteur totale, estatura, altura, altezza, statura, lengte, lichaamslengte, wzrost, altura corporal
insideLeg 4-42 inside leg, inside legs, inseam, inseam length, inside leg length, inner leg, inner leg length, crotch to floor, schrittlänge, innenbeinlänge, innere beinlänge, beinlänge innen, schritthöhe, entrejambe, longueur entrejambe, intérieur jambe, longueur intérieure jambe, entre jambes, entrepierna, tiro interior, largo entrepierna, interno gamba, lunghezza interno gamba, cavallo interno, binnenbeenlengte, binnenbeen, nogawka wewnętrzna, długość wewnętrzna nogawki, wewnętrzna długość nogawki, entrepernas, entreperna, comprimento entrepernas
outsideLeg 5-52 outside leg, outseam, outside leg length, outer leg, outer leg length, side length, side seam, side seam length, waist to floor, waist to ankle, pants side length, pant length, pants length, trouser length, leg length, hosenlänge, seitliche hosenlänge, seitenlänge, seitliche länge, beinlänge, beinlänge außen, äußere beinlänge, longueur côté, longueur jambe, longueur pantalon, hauteur côté, largo lateral, largo pantalón, largo exterior, largo costado, lunghezza esterna, lunghezza fianco, lunghezza pantalone, lunghezza gamba, zijlengte, broeklengte, buitenbeenlengte, zijnaadlengte, długość boczna, długość nogawki, długość spodni, comprimento lateral, comprimento calça
crotchDepth 4-20 crotch depth, body rise, rise, sitting height, seat depth, sitzhöhe, schritttiefe, leibhöhe, hauteur montant, montant, hauteur assise, hauteur entrejambe, tiro, altura tiro, altezza cavallo, cavallo, kruisdiepte, zithoogte, kruishoogte, głębokość krocza, wysokość siedzenia, altura gancho, gancho
crotchLength 8-50 crotch length, total crotch length, crotch, total rise, full rise, crotch total length, schrittnaht, schrittnahtlänge, longueur fourche, fourche, enfourchure, longueur enfourchure, largo tiro, tiro total, lunghezza cavallo, kruislengte, kruisnaad, długość krocza, comprimento gancho
frontRise 4-22 front rise, front crotch length, fourche devant, tiro delantero, cavallo davanti, gancho frente, leibhöhe vorne, voorkruis
backRise 4-26 back rise, back crotch length, fourche dos, tiro trasero, cavallo dietro, gancho costas, leibhöhe hinten, achterkruis
waistToHip 2-14 waist to hip, hip depth, hip height, hüfttiefe, hüfthöhe, hauteur hanches, hauteur bassin, altura cadera, alto cadera, largo cadera, altezza fianchi, altezza bacino, heuphoogte, heupdiepte, wysokość bioder, altura quadril, altura anca
waistToKnee 7-32 waist to knee, taille knie, kniehöhe, taille genou, hauteur genou, largo rodilla, altura rodilla, altezza ginocchio, kniehoogte, altura joelho
waistToHem 3-52 waist to hem, taille ourlet
torso 20-80 torso, torso loop, trunk, body length loop, rumpfumfang, torse, tronco, tułów
neckToHem 5-64 shoulder to hem, length from shoulder, shoulder length to hem
bustDepth 3-18 bust depth, shoulder to bust, shoulder to bust point, shoulder to apex, neck to bust, brusttiefe, BT, hauteur poitrine, profondeur poitrine, altura pecho, alto pecho, altura busto, altezza seno, altezza petto, borsthoogte, altura peito
bustPoints 2-14 bust points, bust point to bust point, bust span, apex to apex, brustpunktabstand, écart poitrine, separación pecho, distanza seno, borstafstand, distância busto
underarmLength 3-30 underarm sleeve length, underarm length, underarm seam, unterarmlänge
skirtLength 4-52 skirt length, rocklänge, longueur jupe, largo falda, lunghezza gonna, roklengte, długość spódnicy, comprimento saia
hemWidth 4-300 hem width, hem, lower edge, width lower edge, width at lower edge, width around lower edge, bottom width, sweep, hem sweep, width at hem, lower edge width, bottom edge, hem around, skirt width, width at bottom, saumweite, saum, saumumfang, weite am saum, largeur bas, bas, largeur ourlet, largeur au bas, tour bas, ourlet, bajo, ancho bajo, ancho dobladillo, ruedo, bajo falda, orlo, larghezza orlo, fondo, larghezza fondo, zoomwijdte, zoom, dół, szerokość dołu, obwód dołu, bainha, largura bainha, barra
legWidth 4-50 leg width, leg opening, leg hem, width each leg, width at leg, hosenweite, fußweite, beinweite, largeur bas jambe, bas jambe, bajo pierna, ancho bajo pierna, fondo gamba, larghezza fondo gamba, pijpwijdte, broekspijp, szerokość nogawki, boca, boca da perna
foot 3-16 foot, foot length, fuß, fußlänge, pied, longueur pied, pie, piede, voet, stopa, pé
`;

/**
 * Labels that say "back length": in a body chart they end at the waist, in a finished one at the hem.
 * Front length in the same way.
 */
export const BACK_LENGTHS = `back length, length back, back, rückenlänge, RL, rückenlänge RL, hintere länge, longueur dos, long dos, hauteur dos, longueur dans dos, largo espalda, longitud espalda, largo trasero, lunghezza dorso, lunghezza schiena, lunghezza dietro, ruglengte, rugl, achterlengte, długość pleców, długość tyłu, comprimento costas, comprimento costa, altura costas`;

/** Labels that mean the bust on a woman and the chest on a man or a child. */
export const BUST_OR_CHEST = `brust, brustumfang, brustweite, BU, petto, busto, poitrine, pecho, borst, borstomvang, borstwijdte, bovenwijdte, peito`;
