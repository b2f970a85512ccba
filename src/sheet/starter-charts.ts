/**
 * The charts of the starter workbook, as somebody would paste them: six patterns of our own making in six layouts. All
 * figures are invented; the size steps are those that are common practice.
 */
export interface StarterPattern {
  readonly name: string;
  readonly pasted: string;
}

/** Tab-separated, as copied from a web page; inches; two views. */
const wrapSkirt = `Wrap skirt
Body measurements (inches)
Size\t8\t10\t12\t14\t16\t18
Waist\t24\t25\t26½\t28\t30\t32
Hip\t33½\t34½\t36\t38\t40\t42

Finished garment measurements (inches)
Size\t8\t10\t12\t14\t16\t18
Waist\t25¼\t26¼\t27¾\t29¼\t31¼\t33¼
Hip\t37½\t38½\t40\t42\t44\t46
Back length\t28\t28\t28¼\t28¼\t28½\t28½

Fabric required (yards)
Size\t8\t10\t12\t14\t16\t18
View A
45" with nap\t2¾\t2¾\t2⅞\t3\t3⅛\t3¼
60" with nap\t1⅞\t1⅞\t2\t2\t2⅛\t2¼
View B
45" with nap\t3⅜\t3⅜\t3½\t3⅝\t3¾\t3⅞
60" with nap\t2⅜\t2⅜\t2½\t2½\t2⅝\t2¾`;

/** One space between figures, as a PDF gives it; inches. */
const campShirt = `CAMP SHIRT
SIZES 8 10 12 14 16 18
BODY MEASUREMENTS
BUST 31 1/2 32 1/2 34 36 38 40 INS.
WAIST 24 25 26 1/2 28 30 32 INS.
HIP 33 1/2 34 1/2 36 38 40 42 INS.
BACK WAIST LENGTH 15 3/4 16 16 1/4 16 1/2 16 3/4 17 INS.
FINISHED GARMENT MEASUREMENTS
BUST 37 1/2 38 1/2 40 42 44 46 INS.
HIP 37 1/2 38 1/2 40 42 44 46 INS.
BACK LENGTH 25 25 1/4 25 1/2 25 3/4 26 26 1/4 INS.
FABRIC REQUIRED
A SHIRT
45"* 2 1/8 2 1/4 2 1/4 2 3/8 2 1/2 2 5/8 YDS.
60"* 1 1/2 1 5/8 1 5/8 1 3/4 1 3/4 1 7/8 YDS.
INTERFACING 20" 3/4 YD.
* WITH NAP.`;

/** A child's sizes with ages, leader dots; inches. */
const pinafore = `Child's pinafore
Child's body measurements in inches
Size .......... 3   4   5   6
Chest ......... 22  23  24  25
Waist ......... 20½ 21  21½ 22
Height ........ 38  41  44  47

Finished garment measurements in inches
Size .......... 3   4   5   6
Chest ......... 25  26  27  28
Back length ... 20  21½ 23  24½

Fabric required in yards
Size .......... 3   4   5   6
View A
45" without nap .. 1¼ 1⅜ 1½ 1⅝
60" without nap .. ⅞ 1 1 1⅛`;

/** Aligned columns; centimetres; one view. */
const choirGown = `Choir gown
Body measurements in cm
Size          36    38    40    42    44    46
Bust          84    88    92    96    100   104
Waist         66    70    74    78    82    86
Hip           92    96    100   104   108   112
Back waist    41    41.5  42    42.5  43    43.5

Finished garment measurements in cm
Size          36    38    40    42    44    46
Bust          104   108   112   116   120   124
Hip           112   116   120   124   128   132
Back length   138   138.5 139   139.5 140   140.5

Fabric required in metres
Size          36    38    40    42    44    46
View A
140 cm with nap   3.40  3.45  3.50  3.60  3.70  3.80
150 cm with nap   3.20  3.25  3.30  3.40  3.50  3.55`;

/** Semicolons and decimal commas, as a European sheet exports them; centimetres. */
const choirBlouse = `Choir blouse;;;;;
Body measurements (cm)
Size;38;40;42;44;46
Bust;88;92;96;100;104
Waist;70,5;74,5;78,5;82,5;86,5
Hip;94;98;102;106;110

Finished garment measurements (cm)
Size;38;40;42;44;46
Bust;97;101;105;109;113
Waist;88;92;96;100;104

Fabric required (m)
Size;38;40;42;44;46
View A
115 cm with nap;1,95;2,05;2,10;2,20;2,30
150 cm with nap;1,50;1,55;1,60;1,65;1,70
View B
115 cm with nap;2,20;2,30;2,35;2,45;2,55
150 cm with nap;1,70;1,75;1,80;1,90;1,95`;

/** A table of pipes; centimetres; men's sizes. */
const choirTrousers = `## Body measurements (cm)

| Size | 46 | 48 | 50 | 52 | 54 |
| :--- | --: | --: | --: | --: | --: |
| Waist | 80 | 84 | 88 | 92 | 97 |
| Hip | 94 | 98 | 102 | 106 | 110 |
| Inside leg | 80 | 81 | 82 | 83 | 84 |

## Finished garment measurements (cm)

| Size | 46 | 48 | 50 | 52 | 54 |
| :--- | --: | --: | --: | --: | --: |
| Waist | 83 | 87 | 91 | 95 | 100 |
| Hip | 102 | 106 | 110 | 114 | 118 |

## Fabric required (m)

| Size | 46 | 48 | 50 | 52 | 54 |
| :--- | --: | --: | --: | --: | --: |
| View A 140 cm with nap | 1.35 | 1.40 | 1.40 | 1.45 | 1.50 |
| View A 150 cm with nap | 1.30 | 1.30 | 1.35 | 1.35 | 1.40 |
| Lining 140 cm | 0.40 | 0.40 | 0.40 | 0.40 | 0.45 |`;

/** The six patterns, in the order of their sheets. */
export const starterPatterns: readonly StarterPattern[] = [
  { name: "Wrap skirt", pasted: wrapSkirt },
  { name: "Camp shirt", pasted: campShirt },
  { name: "Child's pinafore", pasted: pinafore },
  { name: "Choir gown", pasted: choirGown },
  { name: "Choir blouse", pasted: choirBlouse },
  { name: "Choir trousers", pasted: choirTrousers },
];
