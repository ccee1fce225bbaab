/** Where the numbers of the catalogue come from, in German: our own words about them; titles of documents stay as published. */

/** Places within documents. */
export const PLACES_DE: Readonly<Record<string, string>> = {
  'as a public soil-mechanics program computes it; presumes compacted granular material':
    'wie ein öffentliches Programm der Bodenmechanik rechnet; setzt verdichtetes körniges Material voraus',
  'Annex A, Table A.1': 'Anhang A, Tabelle A.1',
  'Annex A, Table A.2': 'Anhang A, Tabelle A.2',
  '2019 edition, Tables 13.1 and 15.2': 'Ausgabe 2019, Tabellen 13.1 und 15.2',
  'Table 6.8': 'Tabelle 6.8',
  '6.3.3.2, Figure 6.2': '6.3.3.2, Bild 6.2',
  'moss and sedum 2 to 6 cm': 'Moos und Sedum 2 bis 6 cm',
  'sedum, moss and herbs 6 to 10 cm': 'Sedum, Moos und Kräuter 6 bis 10 cm',
  'sedum, herbs and grass 10 to 15 cm': 'Sedum, Kräuter und Gras 10 bis 15 cm',
  'grass and herbs 15 to 20 cm': 'Gras und Kräuter 15 bis 20 cm',
  'lawn 15 to 35 cm': 'Rasen 15 bis 35 cm',
  'perennials and low shrubs 15 to 50 cm': 'Stauden und niedrige Sträucher 15 bis 50 cm',
  'shrubs 20 to 60 cm': 'Sträucher 20 bis 60 cm',
  'tall shrubs 35 to 70 cm': 'hohe Sträucher 35 bis 70 cm',
  'small trees 60 to 125 cm and more': 'Kleinbäume 60 bis 125 cm und mehr',
  'trees 100 cm and more': 'Bäume 100 cm und mehr',
  'as in the glossary entry "Anschluss"': 'wie im Glossareintrag „Anschluss“',
  'as several German building pages repeat it': 'wie mehrere deutsche Bauseiten es wiedergeben',
  'Table A.15': 'Tabelle A.15',
  'at least 80 cm of substrate; trees at least 1.0 m over 12 m² each': 'mindestens 80 cm Substrat; Bäume mindestens 1,0 m auf je 12 m²',
  '4.2, clear width of an access': '4.2, lichte Breite einer Zufahrt',
  '4.2, bounded on both sides over more than 12 m': '4.2, auf mehr als 12 m beidseitig begrenzt',
  'table of widths by outer radius; 3.2 m for 40 to 70 m from memory, the scan is misread there':
    'Tabelle der Breiten nach Außenradius; 3,2 m für 40 bis 70 m aus dem Gedächtnis, der Scan ist dort falsch gelesen',
  'transitions before and after bends': 'Übergänge vor und nach Kurven',
  'gradient of an access': 'Neigung einer Zufahrt',
  'gradient of a set-up area': 'Neigung einer Aufstellfläche',
  'steps and kerbs': 'Stufen und Schwellen',
  'width of a set-up area': 'Breite einer Aufstellfläche',
  'length of the strips beside a set-up area, taken as its own':
    'Länge der Streifen neben einer Aufstellfläche, als deren eigene angenommen',
  'strip free of obstacles on the side away from the building, where it stands along it':
    'hindernisfreier Streifen auf der gebäudeabgewandten Seite, wenn sie längs zum Gebäude liegt',
  'strips free of obstacles on both sides, where it stands across': 'hindernisfreie Streifen auf beiden Seiten, wenn sie quer liegt',
  'distance of a set-up area along the building': 'Abstand einer Aufstellfläche längs zum Gebäude',
  'distance along the building for sills up to 18 m; 6 m for higher ones':
    'Abstand längs zum Gebäude bei Brüstungen bis 18 m; 6 m bei höheren',
  'distance of a set-up area across to the building': 'Abstand einer Aufstellfläche quer zum Gebäude',
  'movement area per vehicle': 'Bewegungsfläche je Fahrzeug',
  'transitions before and after a movement area': 'Übergänge vor und nach einer Bewegungsfläche',
  'widths by outer radius, taken to be those of the model guideline': 'Breiten nach Außenradius, angenommen wie in der Muster-Richtlinie',
  'transitions, taken to be those of the model guideline': 'Übergänge, angenommen wie in der Muster-Richtlinie',
  'set-up area, 5 m by 11 m': 'Aufstellfläche, 5 m mal 11 m',
  'movement area, 7 m by 12 m': 'Bewegungsfläche, 7 m mal 12 m',
  'transitions of 4 m before and after a movement area': 'Übergänge von 4 m vor und nach einer Bewegungsfläche',
  'Table 13.1 of volume 1 and 15.2 of volume 2, row pump, as two fire authorities repeat it':
    'Tabelle 13.1 in Band 1 und 15.2 in Band 2, Zeile „pump“, wie zwei Feuerwehrbehörden es wiedergeben',
  'Table 13.1 of volume 1 and 15.2 of volume 2, row high reach, turning circle between kerbs 26.0 m':
    'Tabelle 13.1 in Band 1 und 15.2 in Band 2, Zeile „high reach“, Wendekreis zwischen Bordsteinen 26,0 m',
  'D103.4, 20 ft; D103.1 asks for 26 ft at a hydrant': 'D103.4, 20 ft; D103.1 verlangt 26 ft an einem Hydranten',
  'Table 9, Cs': 'Tabelle 9, Cs',
};

/** Documents that are named by our own words, or with our words about them. */
export const DOCUMENTS_DE: Readonly<Record<string, string>> = {
  'polyethylene, 920 to 940 kg/m³, times the thickness': 'Polyethylen, 920 bis 940 kg/m³, mal die Dicke',
  'nominal size of the unit': 'Nennmaß des Elements',
  'laps of 10 to 20 cm on rolls of 2 m and cutting': 'Überlappung 10 bis 20 cm bei 2 m breiten Rollen und Verschnitt',
  'no spread counted: sheets, hollow elements, foam boards and decks':
    'keine Lastausbreitung gerechnet: Bahnen, Hohlelemente, Schaumplatten und Decks',
  'mass by its name; water uptake 6 kg per kg of fleece': 'Masse nach der Bezeichnung; Wasseraufnahme 6 kg je kg Vlies',
  'needle-punched non-woven under 2 kPa': 'vernadeltes Vlies unter 2 kPa',
  'bonded rubber granulate 750 kg/m³ with 20 % of pores that fill with water':
    'gebundenes Gummigranulat 750 kg/m³ mit 20 % Poren, die sich mit Wasser füllen',
  'mats laid butt to butt, cutting only': 'Matten auf Stoß verlegt, nur Verschnitt',
  'plastic element without fill and without the water in its cups': 'Kunststoffelement ohne Füllung und ohne das Wasser in den Mulden',
  'volume that a fill takes up, 55 to 80 % of the thickness': 'Volumen, das eine Füllung einnimmt, 55 bis 80 % der Dicke',
  'elements of 25 to 60 mm hold 5 to 25 l/m²; the low end for 25 mm':
    'Elemente von 25 bis 60 mm speichern 5 bis 25 l/m²; für 25 mm das untere Ende',
  'edges overlap by one row of studs, cutting': 'Ränder überlappen um eine Noppenreihe, Verschnitt',
  'element filled flush; an open element bears less': 'Element bündig gefüllt; ein offenes trägt weniger',
  'flow per metre of width at 2 % fall': 'Durchfluss je Meter Breite bei 2 % Gefälle',
  'hollow element, about 5 % of its volume is plastic': 'Hohlelement, etwa 5 % des Volumens sind Kunststoff',
  'between 5 l/m² at 25 mm and 23 l/m² at 60 mm': 'zwischen 5 l/m² bei 25 mm und 23 l/m² bei 60 mm',
  'about 20 to 25 l/m² under planting, 23 a usual figure': 'etwa 20 bis 25 l/m² unter Bepflanzung, üblich 23',
  'our value in the read range of moist bulk densities: lava 1.1 to 1.4 t/m³':
    'unser Wert im gelesenen Bereich feuchter Schüttdichten: Lava 1,1 bis 1,4 t/m³',
  'water kept by the grains after draining; saturated density counts it':
    'Wasser, das die Körner nach dem Abtropfen halten; in der gesättigten Dichte enthalten',
  'single-sized fill, little settlement: 1.05 to 1.10': 'Einkornschüttung, geringe Setzung: 1,05 bis 1,10',
  'fill held in place by elements and layers above; by data sheet under vehicles':
    'Schüttung, von Elementen und Lagen darüber gehalten; unter Fahrzeugen nach Datenblatt',
  'default for granular layers; needs evidence for this material under wheels':
    'Startwert für körnige Lagen; für dieses Material unter Rädern nachzuweisen',
  'articulated tipper, 25 m³ body, about 24 t load': 'Sattelkipper, 25 m³ Mulde, etwa 24 t Ladung',
  'single-sized grains have about 40 % of voids; what they keep after draining is not in it':
    'Einkornmaterial hat etwa 40 % Hohlräume; was nach dem Abtropfen bleibt, ist nicht darin',
  'our value in the read range for gravel, 0.001 to 1 m/s; falls with fines and under load':
    'unser Wert im gelesenen Bereich für Kies, 0,001 bis 1 m/s; sinkt mit Feinteilen und unter Last',
  'our value in the read range of moist bulk densities: pumice 0.7 to 1.2 t/m³':
    'unser Wert im gelesenen Bereich feuchter Schüttdichten: Bims 0,7 bis 1,2 t/m³',
  'our value in the read range of moist bulk densities: expanded clay 0.5 to 0.8 t/m³ (saturated; dry inside 0.25 to 0.40 as built in)':
    'unser Wert im gelesenen Bereich feuchter Schüttdichten: Blähton 0,5 bis 0,8 t/m³ (gesättigt; trocken innerhalb 0,25 bis 0,40 im eingebauten Zustand)',
  'expanded clay, loose to placed 1.05 to 1.15': 'Blähton, lose zu eingebaut 1,05 bis 1,15',
  'articulated lorry with moving floor, 60 m³ used, about 24 t load': 'Sattelzug mit Schubboden, 60 m³ genutzt, etwa 24 t Ladung',
  'our value in the read range of moist bulk densities: expanded shale 0.5 to 0.7 t/m³':
    'unser Wert im gelesenen Bereich feuchter Schüttdichten: Blähschiefer 0,5 bis 0,7 t/m³',
  'our value in the read range of moist bulk densities: gravel 4/8 to 8/16 1.6 to 1.8 t/m³ (taken for 16/32 too)':
    'unser Wert im gelesenen Bereich feuchter Schüttdichten: Kies 4/8 bis 8/16 1,6 bis 1,8 t/m³ (auch für 16/32 genommen)',
  'Table of bulking factors, gravel: loose 1.05, compacted 0.97': 'Tabelle der Auflockerungsfaktoren, Kies: lose 1,05, verdichtet 0,97',
  '2:1 prism method (half the depth on every side)': 'Verfahren 2:1 (auf jeder Seite die halbe Tiefe)',
  'our value in the read range of built-in densities: foam-glass granulate 0.20 to 0.25 g/cm³, moisture included; dry is 150 kg/m³ loose × 1.3':
    'unser Wert im gelesenen Bereich eingebauter Dichten: Schaumglasgranulat 0,20 bis 0,25 g/cm³, Feuchte eingeschlossen; trocken 150 kg/m³ lose × 1,3',
  'Building-authority approval of foam-glass gravel, 1.3 : 1, as a trade page quotes it':
    'Bauaufsichtliche Zulassung von Schaumglasschotter, 1,3 : 1, wie eine Fachseite sie zitiert',
  'design values of 120 to 200 kPa for compacted foam-glass gravel':
    'Bemessungswerte von 120 bis 200 kPa für verdichteten Schaumglasschotter',
  'low end of 0.01 to 0.1 m/s that a supplier of compacted foam-glass gravel states':
    'unteres Ende von 0,01 bis 0,1 m/s, die ein Lieferant für verdichteten Schaumglasschotter angibt',
  'taken as a sealed block, the safe side; "grains" only with evidence':
    'als geschlossener Block angenommen, die sichere Seite; "grains" nur mit Nachweis',
  'our value in the read range of built-in densities: expanded clay 0.25 to 0.40 g/cm³ (dry; saturated inside 0.5 to 0.8 t/m³ moist bulk)':
    'unser Wert im gelesenen Bereich eingebauter Dichten: Blähton 0,25 bis 0,40 g/cm³ (trocken; gesättigt innerhalb 0,5 bis 0,8 t/m³ feuchte Schüttdichte)',
  'our value in the read range of built-in densities: EPS block 0.015 to 0.035 g/cm³ (dry); saturated 0.5 kN/m³ from memory for drained ground':
    'unser Wert im gelesenen Bereich eingebauter Dichten: EPS-Block 0,015 bis 0,035 g/cm³ (trocken); gesättigt 0,5 kN/m³ aus dem Gedächtnis für entwässerten Grund',
  'lasting pressure on EPS of 20 kg/m³ at 2 % creep': 'Dauerdruck auf EPS mit 20 kg/m³ bei 2 % Kriechen',
  'closed-cell board, water uptake of about 1 % by volume': 'geschlossenzellige Platte, Wasseraufnahme etwa 1 % des Volumens',
  'lasting pressure on XPS of the 300 kPa class': 'Dauerdruck auf XPS der 300-kPa-Klasse',
  'mass by its name; water uptake 5 kg per kg of fleece': 'Masse nach der Bezeichnung; Wasseraufnahme 5 kg je kg Vlies',
  'our value in the read range of built-in densities: mixed-grained soil 1.90 to 2.35 g/cm³':
    'unser Wert im gelesenen Bereich eingebauter Dichten: gemischtkörniger Boden 1,90 bis 2,35 g/cm³',
  'base gravel, loose to compacted 1.20 to 1.30': 'Schotter, lose zu verdichtet 1,20 bis 1,30',
  'compacted base course; dense gravel is remembered as 600 kPa and more, medium dense as 200 to 600 kPa':
    'verdichtete Tragschicht; dichter Kies ist mit 600 kPa und mehr in Erinnerung, mitteldichter mit 200 bis 600 kPa',
  'mixed grains have 20 to 35 % of voids; what they keep after draining is not in it':
    'gemischte Körnung hat 20 bis 35 % Hohlräume; was nach dem Abtropfen bleibt, ist nicht darin',
  'our value in the read range of built-in densities: silt, sand and gravel 1.70 to 2.20 g/cm³':
    'unser Wert im gelesenen Bereich eingebauter Dichten: Schluff, Sand und Kies 1,70 bis 2,20 g/cm³',
  'our value in the read range of moist bulk densities: crushed brick 1.0 to 1.4 t/m³ (dry; saturated assumed above it)':
    'unser Wert im gelesenen Bereich feuchter Schüttdichten: Ziegelbruch 1,0 bis 1,4 t/m³ (trocken; gesättigt darüber angenommen)',
  'bedding sand and chippings, loose to compacted 1.15 to 1.25': 'Bettungssand und Splitt, lose zu verdichtet 1,15 bis 1,25',
  'single-grain mortar with open pores, lighter than dense cement mortar':
    'Einkornmörtel mit offenen Poren, leichter als dichter Zementmörtel',
  'mixed and loose against tamped': 'gemischt und lose gegenüber gestampft',
  'hardened, a small part of its compressive strength': 'erhärtet, ein kleiner Teil der Druckfestigkeit',
  'EN 1991-2:2003, 1:1 through surfacing and concrete': 'EN 1991-2:2003, 1:1 durch Belag und Beton',
  'mixer lorry, 8 m³': 'Fahrmischer, 8 m³',
  'EN 1991-1-1:2002, normal-weight concrete 24.0 kN/m³ (saturated value, rounded up; dry value assumed)':
    'EN 1991-1-1:2002, Normalbeton 24,0 kN/m³ (gesättigter Wert, aufgerundet; trockener Wert angenommen)',
  'tyre pressure on a paving laid for vehicles; breaking of single units is not checked':
    'Reifendruck auf einem für Fahrzeuge verlegten Belag; Bruch einzelner Steine wird nicht geprüft',
  'foot traffic and furniture only, set low so that wheels are reported':
    'nur Fußgänger und Möbel, niedrig angesetzt, damit Räder gemeldet werden',
  'EN 1991-1-1:2002, granite 27.0 to 30.0 kN/m³': 'EN 1991-1-1:2002, Granit 27,0 bis 30,0 kN/m³',
  'hard-burnt brick with joints': 'hartgebrannter Ziegel mit Fugen',
  '90 % granite as for the slabs, 10 % joints filled with chippings': '90 % Granit wie bei den Platten, 10 % Fugen mit Splitt gefüllt',
  '6 kg/m² of plastic and 45 l/m² of lawn substrate': '6 kg/m² Kunststoff und 45 l/m² Rasensubstrat',
  '45 l/m² of substrate at 45 % in 50 mm': '45 l/m² Substrat zu 45 % in 50 mm',
  'butt-jointed rolls, cutting at edges only': 'Rollen auf Stoß, Verschnitt nur an Rändern',
  'filled grid on a compacted bedding; by data sheet': 'gefülltes Gitter auf verdichteter Bettung; nach Datenblatt',
  'default for granular layers; the grid itself is not counted': 'Startwert für körnige Lagen; das Gitter selbst zählt nicht',
  '60 % concrete and 40 % openings filled with lawn substrate': '60 % Beton und 40 % Öffnungen, mit Rasensubstrat gefüllt',
  '40 % of the volume with substrate at 45 %': '40 % des Volumens mit Substrat zu 45 %',
  'foot and cycle traffic, a garden tractor': 'Fuß- und Radverkehr, ein Gartentraktor',
  'boards 28 mm and bearers 60 × 40 mm every 0.5 m at 750 kg/m³; wet timber 30 % heavier':
    'Dielen 28 mm und Lagerhölzer 60 × 40 mm alle 0,5 m mit 750 kg/m³; nasses Holz 30 % schwerer',
  'boards 28 mm on bearers 60 mm high': 'Dielen 28 mm auf 60 mm hohen Lagerhölzern',
  'cutting of boards': 'Verschnitt der Dielen',
  'our value in the read range of moist bulk densities: topsoil mixes 1.0 to 1.8 t/m³':
    'unser Wert im gelesenen Bereich feuchter Schüttdichten: Oberbodengemische 1,0 bis 1,8 t/m³',
  'FLL green-roof guideline, intensive substrates 45 to 65 % by volume':
    'FLL-Dachbegrünungsrichtlinie, Intensivsubstrate 45 bis 65 % des Volumens',
  'substrates, loose to settled 1.10 to 1.25': 'Substrate, lose zu gesetzt 1,10 bis 1,25',
  'planted soil in moist state: foot traffic and light plant on boards':
    'bepflanzter Boden in feuchtem Zustand: Fußgänger und leichtes Gerät auf Bohlen',
  'air left in a substrate at its full water capacity, about 10 to 20 % by volume':
    'Luft, die bei voller Wasserkapazität im Substrat bleibt, etwa 10 bis 20 % des Volumens',
  'our value in the read range of moist bulk densities: expanded-clay mixes 0.8 to 1.4 t/m³':
    'unser Wert im gelesenen Bereich feuchter Schüttdichten: Blähtongemische 0,8 bis 1,4 t/m³',
  'FLL green-roof guideline, extensive substrates in several layers 35 to 65 % by volume':
    'FLL-Dachbegrünungsrichtlinie, Extensivsubstrate in mehreren Schichten 35 bis 65 % des Volumens',
  'our value in the read range of moist bulk densities: lava mixes 1.3 to 1.8 t/m³':
    'unser Wert im gelesenen Bereich feuchter Schüttdichten: Lavagemische 1,3 bis 1,8 t/m³',
  'mineral mix, below the range of planting substrates': 'mineralisches Gemisch, unter dem Bereich von Pflanzsubstraten',
  'coarse mix that holds shape, slightly below intensive substrates': 'grobes, strukturstabiles Gemisch, etwas unter Intensivsubstraten',
  'turf with 15 to 20 mm of soil; 10 l/m² of water when soaked': 'Rasen mit 15 bis 20 mm Boden; durchnässt 10 l/m² Wasser',
  'usual cut of rolled turf': 'übliche Schälung von Rollrasen',
  '10 l/m² in 20 mm': '10 l/m² in 20 mm',
  'mat with carrier and 20 mm of substrate; 10 l/m² of water when soaked': 'Matte mit Träger und 20 mm Substrat; durchnässt 10 l/m² Wasser',
  'mat with carrier and substrate': 'Matte mit Träger und Substrat',
  '10 l/m² in 25 mm': '10 l/m² in 25 mm',
  'not for walking on': 'nicht begehbar',
  'German model guideline on areas for the fire brigade, gross 16 t, as a forum thread quotes it':
    'Muster-Richtlinie über Flächen für die Feuerwehr, Gesamtmasse 16 t, wie ein Forenbeitrag sie zitiert',
  'greatest width of a road vehicle': 'größte Breite eines Straßenfahrzeugs',
  'German model guideline on areas for the fire brigade, axle 10 t; the front axle is the rest':
    'Muster-Richtlinie über Flächen für die Feuerwehr, Achse 10 t; die Vorderachse ist der Rest',
  'short wheelbase of a two-axle appliance': 'kurzer Radstand eines zweiachsigen Fahrzeugs',
  'middle of tyres at a width of 2.5 m': 'Reifenmitte bei 2,5 m Breite',
  'DIN 1072, class 16/16, contact of front and rear wheels': 'DIN 1072, Klasse 16/16, Aufstandsfläche der Vorder- und Hinterräder',
  'German model guideline on areas for the fire brigade, least outer radius of a bend':
    'Muster-Richtlinie über Flächen für die Feuerwehr, kleinster Außenradius einer Kurve',
  'Approved Document B (England), typical vehicle access route specification, as a fire-safety forum repeats it':
    'Approved Document B (England), typische Anforderungen an Zufahrten, wie ein Brandschutzforum sie wiedergibt',
  'split of the laden weight over the axles': 'Verteilung der beladenen Masse auf die Achsen',
  'Approved Document B (England), turning circle between walls 19.2 m, as a county fire service repeats it':
    'Approved Document B (England), Wendekreis zwischen Wänden 19,2 m, wie eine Feuerwehr ihn wiedergibt',
  'wheelbase of a two-axle ladder': 'Radstand einer zweiachsigen Drehleiter',
  'Approved Document B (England), turning circle between walls 29.0 m': 'Approved Document B (England), Wendekreis zwischen Wänden 29,0 m',
  'Swiss guideline on fire-brigade access and set-up areas (FKS, 2015), class 18 t, as a forum question quotes it':
    'Schweizer Richtlinie für Feuerwehrzufahrten, Bewegungs- und Stellflächen (FKS, 2015), Klasse 18 t, wie eine Forenfrage sie zitiert',
  'tyre pressed flat under the laden wheel': 'unter dem beladenen Rad abgeplatteter Reifen',
  'least outer radius of the German model guideline taken for this class too':
    'kleinster Außenradius der Muster-Richtlinie, auch für diese Klasse genommen',
  'Swiss guideline on fire-brigade access and set-up areas (FKS, 2015), support 144 kN at 800 kN/m², as a forum question quotes it':
    'Schweizer Richtlinie für Feuerwehrzufahrten, Bewegungs- und Stellflächen (FKS, 2015), Abstützung 144 kN bei 800 kN/m², wie eine Forenfrage sie zitiert',
  'International Fire Code, Appendix D, surface for apparatus up to 75,000 lb':
    'International Fire Code, Appendix D, Oberfläche für Fahrzeuge bis 75.000 lb',
  'three axles, the rear ones as a tandem': 'drei Achsen, die hinteren als Tandem',
  'middle of twin tyres at a width of 2.5 m': 'Mitte der Zwillingsreifen bei 2,5 m Breite',
  'AASHTO LRFD 3.6.1.2.5, twin tyre 10 in × 20 in; front tyre assumed':
    'AASHTO LRFD 3.6.1.2.5, Zwillingsreifen 10 in × 20 in; Vorderreifen angenommen',
  'usual turning circle of this kind of machine': 'üblicher Wendekreis solcher Maschinen',
  '2.0 t service weight and 0.6 t in the bucket': '2,0 t Betriebsgewicht und 0,6 t in der Schaufel',
  'usual size of this kind of machine': 'übliche Größe solcher Maschinen',
  '5.0 t service weight and 1.8 t in the bucket': '5,0 t Betriebsgewicht und 1,8 t in der Schaufel',
  '1.2 t empty and 1.5 t in the skip': '1,2 t leer und 1,5 t in der Mulde',
  '1.8 t service weight; digging over one side presses harder than this':
    '1,8 t Betriebsgewicht; beim Graben über eine Seite drückt er stärker',
  'even pressure under both tracks': 'gleichmäßiger Druck unter beiden Ketten',
  '1.0 t of load and 0.08 t of truck': '1,0 t Last und 0,08 t Eigengewicht',
  'pair of plastic rollers at each fork end, counted as one patch':
    'ein Paar Kunststoffrollen an jedem Gabelende, als eine Lastfläche gerechnet',
  'EN 1991-1-1:2002, category F, gross weight up to 30 kN': 'EN 1991-1-1:2002, Kategorie F, Gesamtgewicht bis 30 kN',
  'EN 1991-1-1:2002, axle 10 to 20 kN; the upper end behind, the rest of 30 kN in front':
    'EN 1991-1-1:2002, Achse 10 bis 20 kN; das obere Ende hinten, der Rest von 30 kN vorn',
  'usual wheelbase of a car': 'üblicher Radstand eines Pkw',
  'usual turning circle of a car, 11 m': 'üblicher Wendekreis eines Pkw, 11 m',
  'EN 1991-1-1:2002, category G, gross weight over 30 kN up to 160 kN':
    'EN 1991-1-1:2002, Kategorie G, Gesamtgewicht über 30 kN bis 160 kN',
  'EN 1991-1-1:2002, axle 40 to 90 kN; the upper end behind, the rest of 160 kN in front':
    'EN 1991-1-1:2002, Achse 40 bis 90 kN; das obere Ende hinten, der Rest von 160 kN vorn',
  'wheelbase of a light lorry': 'Radstand eines leichten Lkw',
  'FLL green-roof guideline, surface loads of vegetation, 10 kg/m² = 0.0981 kN/m²':
    'FLL-Dachbegrünungsrichtlinie, Flächenlasten der Vegetation, 10 kg/m² = 0,0981 kN/m²',
  'FLL green-roof guideline, guide values for depths of layers': 'FLL-Dachbegrünungsrichtlinie, Richtwerte für Schichtdicken',
  'shrubs 30 to 60 cm on podium decks': 'Sträucher 30 bis 60 cm auf Tiefgaragendecken',
  'FLL recommendations for tree pits, 12 m³ of soil to root in': 'FLL-Empfehlungen für Baumpflanzungen, 12 m³ durchwurzelbarer Raum',
  'below 35 to 40 cm substrate has no organic matter': 'unterhalb von 35 bis 40 cm hat Substrat keine organischen Stoffe',
  'base course 15 to 30 cm, more for heavy vehicles by calculation': 'Tragschicht 15 bis 30 cm, für schwere Fahrzeuge mehr nach Berechnung',
  'base course in lifts of at most 30 cm loose, about 25 cm compacted':
    'Tragschicht in Einbaulagen von höchstens 30 cm lose, etwa 25 cm verdichtet',
  'German flat-roof guideline and DIN 18531-1, membrane above the finish at a pitch up to 5°':
    'Flachdachrichtlinie und DIN 18531-1, Abdichtung über dem Belag bei Neigung bis 5°',
  'German flat-roof guideline and DIN 18531-1, membrane above the finish at a door with a drained channel':
    'Flachdachrichtlinie und DIN 18531-1, Abdichtung über dem Belag an einer Tür mit entwässerter Rinne',
  'strip of 30 to 50 cm without plants along façades, upstands and round outlets':
    'Streifen von 30 bis 50 cm ohne Pflanzen an Fassaden, Aufkantungen und um Abläufe',
  'falls of 1.5 to 2 % on layers that bear water; guidelines recommend 2 %':
    'Gefälle von 1,5 bis 2 % auf wasserführenden Lagen; Richtlinien empfehlen 2 %',
  'shallower puddles stay within fleece and element; a check of ours, no rule of a guideline':
    'flachere Pfützen bleiben in Vlies und Element; eine eigene Prüfung, keine Regel einer Richtlinie',
  'global safety of 1.5 against sliding, as before partial factors':
    'globale Sicherheit 1,5 gegen Gleiten, wie vor den Teilsicherheitsbeiwerten',
  'global safety of 1.5 against overturning, as before partial factors':
    'globale Sicherheit 1,5 gegen Kippen, wie vor den Teilsicherheitsbeiwerten',
  'German flat-roof guideline, 2 % recommended for every layer that bears water':
    'Flachdachrichtlinie, 2 % für jede wasserführende Lage empfohlen',
  'reinforced concrete 2500 kg/m³; EN 1991-1-1 rounds it up to 25 kN/m³': 'Stahlbeton 2500 kg/m³; EN 1991-1-1 rundet auf 25 kN/m³ auf',
  'places where appliances are set up are laid without steps': 'Flächen, auf denen Fahrzeuge aufgestellt werden, liegen ohne Stufen',
  'EN 1997-1, recommended factor on permanent uplift (UPL)': 'EN 1997-1, empfohlener Beiwert für ständigen Auftrieb (UPL)',
  'EN 1997-1, recommended factor on stabilising weight (UPL), as several texts repeat it':
    'EN 1997-1, empfohlener Beiwert für stabilisierendes Gewicht (UPL), wie mehrere Texte ihn wiedergeben',
  'Hamburg development plans, binding text on planting over garages below ground':
    'Hamburger Bebauungspläne, Festsetzung zur Begrünung von Tiefgaragen',
  'DIN 14090:2003, as two building glossaries repeat it': 'DIN 14090:2003, wie zwei Bauglossare es wiedergeben',
  'German model guideline on areas for the fire brigade, as printed in the Berlin official gazette VI No. 11, 30 October 1985':
    'Muster-Richtlinie über Flächen für die Feuerwehr, wie im Dienstblatt des Senats von Berlin VI Nr. 11 vom 30. Oktober 1985 gedruckt',
  'German model guideline on areas for the fire brigade': 'Muster-Richtlinie über Flächen für die Feuerwehr',
  'German model guideline on areas for the fire brigade, as two pages on fire protection repeat it':
    'Muster-Richtlinie über Flächen für die Feuerwehr, wie zwei Brandschutzseiten sie wiedergeben',
  'England, Approved Document B 2019, typical vehicle access route specification':
    'England, Approved Document B 2019, typische Anforderungen an Zufahrten',
  'International Fire Code, Appendix D, where adopted': 'International Fire Code, Appendix D, wo eingeführt',
  'DIN 1986-100:2016-12, as public code repeats it': 'DIN 1986-100:2016-12, wie öffentlicher Programmcode es wiedergibt',
  'FLL green-roof guideline, peak run-off coefficient by depth of layers':
    'FLL-Dachbegrünungsrichtlinie, Spitzenabflussbeiwert nach Schichtdicke',
  'FLL green-roof guideline, annual run-off coefficient by depth of layers, 650 to 800 mm of rain a year':
    'FLL-Dachbegrünungsrichtlinie, Jahresabflussbeiwert nach Schichtdicke, 650 bis 800 mm Regen im Jahr',
  'mean coefficient Cm of DIN 1986-100:2016-12, Table 9, taken for the year':
    'mittlerer Beiwert Cm der DIN 1986-100:2016-12, Tabelle 9, für das Jahr genommen',
  'mean coefficient Cm of DIN 1986-100:2016-12, taken for the year': 'mittlerer Beiwert Cm der DIN 1986-100:2016-12, für das Jahr genommen',
};
