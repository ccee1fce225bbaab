/** Small building models written by hand. Decks, storeys and their places are invented. */

const whole = (schema: string, lines: string) =>
  `ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');\nFILE_SCHEMA(('${schema}'));\nENDSEC;\nDATA;\n${lines.trim()}\nENDSEC;\nEND-ISO-10303-21;\n`;

/** Project with its unit, the world, and up. Ids 1 to 9. */
const project = (unit: string, context = '$') => `
#1=IFCCARTESIANPOINT((0.,0.,0.));
#2=IFCAXIS2PLACEMENT3D(#1,$,$);
#3=IFCLOCALPLACEMENT($,#2);
#4=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-5,#2,${context});
#5=${unit}
#6=IFCUNITASSIGNMENT((#5));
#7=IFCPROJECT('p',$,'Invented court',$,$,$,$,(#4),#6);
#8=IFCDIRECTION((0.,0.,1.));
#9=IFCDIRECTION((0.,0.,-1.));`;
const MM = 'IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);';
const M = 'IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);';

/** A body and a product that has it; uses ids from `id` to `id + 2`. */
const product = (id: number, type: string, { name, place, item, more = '$' }: Product) => `
#${id}=IFCSHAPEREPRESENTATION(#4,'Body','SweptSolid',(#${item}));
#${id + 1}=IFCPRODUCTDEFINITIONSHAPE($,$,(#${id}));
#${id + 2}=${type}('g${id}',$,'${name}',$,$,#${place},#${id + 1},'T${id}'${more === '' ? '' : `,${more}`});`;
interface Product {
  readonly name: string;
  readonly place: number;
  readonly item: number;
  /** What stands behind the tag; IFC2X3 has nothing there for columns. */
  readonly more?: string;
}

/** A placement in the plan, not turned, within another; uses `id` to `id + 2`. */
const placed = (id: number, inside: number, [x, y, z]: readonly [number, number, number]) => `
#${id}=IFCCARTESIANPOINT((${x}.,${y}.,${z}.));
#${id + 1}=IFCAXIS2PLACEMENT3D(#${id},$,$);
#${id + 2}=IFCLOCALPLACEMENT(#${inside},#${id + 1});`;

/**
 * IFC4 in millimetres. The storey lies at 100 m, 50 m, −1 m; in it the slab at 2 m, 1 m, +0.2 m, turned so that its x runs along (0.8, 0.6):
 * slab (x, y) lies at (102 + 0.8 x − 0.6 y, 51 + 0.6 x + 0.8 y) m. An L of 24 × 16 m, 300 mm downwards from its top; an opening of
 * 3 × 2 m around (6, 5) m from 400 mm below the top to 100 mm above; columns at (5, 2), (20, 2), (20, 14) and (5, 10) m, two of 400 × 600 mm
 * along the slab, two round of 250 mm radius, from 4 m below the top to the slab; one more outside, one on the storey above.
 */
export const TURNED_SLAB = whole(
  'IFC4',
  `${project(MM)}
${placed(10, 3, [100000, 50000, -1000])}
#13=IFCBUILDINGSTOREY('s',$,'Courtyard',$,$,#12,$,$,.ELEMENT.,-1000.);
#14=IFCCARTESIANPOINT((2000.,1000.,200.));
#15=IFCDIRECTION((0.8,0.6,0.));
#16=IFCAXIS2PLACEMENT3D(#14,#8,#15);
#17=IFCLOCALPLACEMENT(#12,#16);
#20=IFCCARTESIANPOINTLIST2D(((0.,0.),(24000.,0.),(24000.,16000.),(10000.,16000.),(10000.,12000.),(0.,12000.)));
#21=IFCINDEXEDPOLYCURVE(#20,(IFCLINEINDEX((1,2,3,4,5,6,1))),.F.);
#22=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#21);
#23=IFCEXTRUDEDAREASOLID(#22,$,#9,300.);
${product(24, 'IFCSLAB', { name: 'Deck \\X2\\00DC\\X0\\ber P1', place: 17, item: 23, more: '.FLOOR.' })}
#30=IFCCARTESIANPOINT((6000.,5000.,-400.));
#31=IFCAXIS2PLACEMENT3D(#30,$,$);
#32=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,3000.,2000.);
#33=IFCEXTRUDEDAREASOLID(#32,#31,#8,500.);
${product(34, 'IFCOPENINGELEMENT', { name: 'Light well', place: 17, item: 33, more: '.OPENING.' })}
#37=IFCRELVOIDSELEMENT('v',$,$,$,#26,#36);
#40=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,400.,600.);
#41=IFCEXTRUDEDAREASOLID(#40,$,#8,3700.);
#42=IFCCIRCLEPROFILEDEF(.AREA.,$,$,250.);
#43=IFCEXTRUDEDAREASOLID(#42,$,#8,3700.);
${placed(50, 17, [5000, 2000, -4000])}${product(53, 'IFCCOLUMN', { name: 'C1', place: 52, item: 41 })}
${placed(60, 17, [20000, 2000, -4000])}${product(63, 'IFCCOLUMN', { name: 'C2', place: 62, item: 41 })}
${placed(70, 17, [20000, 14000, -4000])}${product(73, 'IFCCOLUMN', { name: 'C3', place: 72, item: 43 })}
${placed(80, 17, [5000, 10000, -4000])}${product(83, 'IFCCOLUMN', { name: 'C4', place: 82, item: 43 })}
${placed(90, 17, [30000, 2000, -4000])}${product(93, 'IFCCOLUMN', { name: 'outside', place: 92, item: 41 })}
${placed(100, 17, [5000, 2000, 0])}${product(103, 'IFCCOLUMN', { name: 'above', place: 102, item: 41 })}
#110=IFCWALL('w1',$,'Wall',$,$,#3,$,$,$);
#111=IFCWALLSTANDARDCASE('w2',$,'Wall',$,$,#3,$,$,$);
#112=IFCFURNITURE('f',$,'Bench',$,$,#3,$,$,$);
#120=IFCRELCONTAINEDINSPATIALSTRUCTURE('c',$,$,$,(#26),#13);`,
);

/**
 * IFC2X3 in metres: a slab of faces, 20 × 10 m, 0.25 m thick; its top falls from 0.2 m at x = 0 to 0 at x = 20. Two columns of 0.4 × 0.3 m
 * inserted from one drawn shape at (5, 5) and (15, 5), the second turned by a quarter.
 */
export const SLOPED_FACES = whole(
  'IFC2X3',
  `${project(M)}
#11=IFCCARTESIANPOINT((0.,0.,0.2));
#12=IFCCARTESIANPOINT((20.,0.,0.));
#13=IFCCARTESIANPOINT((20.,10.,0.));
#14=IFCCARTESIANPOINT((0.,10.,0.2));
#15=IFCCARTESIANPOINT((0.,0.,-0.05));
#16=IFCCARTESIANPOINT((20.,0.,-0.25));
#17=IFCCARTESIANPOINT((20.,10.,-0.25));
#18=IFCCARTESIANPOINT((0.,10.,-0.05));
${[
  [11, 12, 13, 14],
  [18, 17, 16, 15],
  [15, 16, 12, 11],
  [16, 17, 13, 12],
  [17, 18, 14, 13],
  [18, 15, 11, 14],
]
  .map(
    (corners, i) => `#${20 + i}=IFCPOLYLOOP((${corners.map((id) => `#${id}`).join(',')}));
#${30 + i}=IFCFACEOUTERBOUND(#${20 + i},.T.);
#${40 + i}=IFCFACE((#${30 + i}));`,
  )
  .join('\n')}
#50=IFCCLOSEDSHELL((#40,#41,#42,#43,#44,#45));
#51=IFCFACETEDBREP(#50);
${product(52, 'IFCSLAB', { name: 'Sloped', place: 3, item: 51, more: '.ROOF.' })}
#60=IFCCARTESIANPOINT((0.,0.));
#61=IFCAXIS2PLACEMENT2D(#60,$);
#62=IFCRECTANGLEPROFILEDEF(.AREA.,$,#61,0.4,0.3);
#63=IFCEXTRUDEDAREASOLID(#62,#2,#8,3.);
#64=IFCSHAPEREPRESENTATION(#4,'Body','SweptSolid',(#63));
#65=IFCREPRESENTATIONMAP(#2,#64);
#66=IFCCARTESIANPOINT((5.,5.,-3.1));
#67=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#66,1.,$);
#68=IFCMAPPEDITEM(#65,#67);
${product(69, 'IFCCOLUMN', { name: 'K1', place: 3, item: 68, more: '' })}
#76=IFCCARTESIANPOINT((15.,5.,-3.1));
#77=IFCDIRECTION((0.,1.,0.));
#75=IFCDIRECTION((-1.,0.,0.));
#78=IFCCARTESIANTRANSFORMATIONOPERATOR3D(#77,#75,#76,1.,#8);
#79=IFCMAPPEDITEM(#65,#78);
${product(80, 'IFCCOLUMN', { name: 'K2', place: 3, item: 79, more: '' })}`,
);

/** √1.0004: the length of a metre of plan along a slope of 2 %, as the series 1 + 0.0002 − 2·10⁻⁸ + 4·10⁻¹² gives it. */
const ALONG_SLOPE = 1.000199980004;

/**
 * IFC4 in metres: a profile of 20 × 10 m of plan laid into a slope that rises 2 % along x, 0.3 m thick, its underside beginning at (0, 0, 1).
 * The way it is swept is upright: 0.02 along the slope and 1 across it make (0.02 − 0.02, 0, 0.0004 + 1) / 1.0004.
 */
export const TILTED_PROFILE = whole(
  'IFC4',
  `${project(M)}
#10=IFCCARTESIANPOINT((0.,0.,1.));
#11=IFCDIRECTION((-0.02,0.,1.));
#12=IFCDIRECTION((1.,0.,0.02));
#13=IFCAXIS2PLACEMENT3D(#10,#11,#12);
#14=IFCCARTESIANPOINT((${(10 * ALONG_SLOPE).toFixed(12)},5.));
#15=IFCAXIS2PLACEMENT2D(#14,$);
#16=IFCRECTANGLEPROFILEDEF(.AREA.,$,#15,${(20 * ALONG_SLOPE).toFixed(12)},10.);
#17=IFCDIRECTION((0.02,0.,1.));
#18=IFCEXTRUDEDAREASOLID(#16,#13,#17,0.3);
${product(20, 'IFCROOF', { name: 'Tilted', place: 3, item: 18, more: '.SHED_ROOF.' })}`,
);

/**
 * IFC4 in feet: 100 × 50 ft with half a circle of 25 ft at its end, top at 10 ft; a round opening of 4 ft radius at (20, 25) ft.
 */
export const IN_FEET = whole(
  'IFC4',
  `${project("IFCCONVERSIONBASEDUNIT(#90,.LENGTHUNIT.,'FOOT',#91);")}
#90=IFCDIMENSIONALEXPONENTS(1,0,0,0,0,0,0);
#91=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(0.3048),#92);
#92=${M}
#10=IFCCARTESIANPOINTLIST2D(((0.,0.),(100.,0.),(125.,25.),(100.,50.),(0.,50.)));
#11=IFCINDEXEDPOLYCURVE(#10,(IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4)),IFCLINEINDEX((4,5,1))),$);
#12=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#11);
#13=IFCEXTRUDEDAREASOLID(#12,$,#8,1.);
${placed(20, 3, [0, 0, 9])}
${product(24, 'IFCSLAB', { name: 'Rounded', place: 22, item: 13, more: '.BASESLAB.' })}
#30=IFCCARTESIANPOINT((20.,25.,-1.));
#31=IFCAXIS2PLACEMENT3D(#30,$,$);
#32=IFCCIRCLEPROFILEDEF(.AREA.,$,$,4.);
#33=IFCEXTRUDEDAREASOLID(#32,#31,#8,3.);
${product(34, 'IFCOPENINGELEMENT', { name: 'Round', place: 22, item: 33 })}
#37=IFCRELVOIDSELEMENT('v',$,$,$,#26,#36);`,
);

/** A slab of a rectangle from (x, y) to (x + 10, y + 10) m, its top at z; uses ids from `id` to `id + 9`. */
const square = (id: number, name: string, [x, y, z]: readonly [number, number, number]) => `
${placed(id, 3, [x + 5, y + 5, z])}
#${id + 3}=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,10.,10.);
#${id + 4}=IFCEXTRUDEDAREASOLID(#${id + 3},$,#9,0.3);
${product(id + 5, 'IFCSLAB', { name, place: id + 2, item: id + 4, more: '.FLOOR.' })}`;

/**
 * IFC4 in metres: on storey "P" two slabs of 10 × 10 m side by side with their tops at 0, on storey "Above" one at +3 m; walls and a door.
 * True north 30° clockwise of y: (0.5, 0.866). A map conversion to E 400 000, N 5 800 000, level 35, x turned to (0, 1): project (x, y) lies at
 * (400 000 − y, 5 800 000 + x).
 */
export const SEVERAL_SLABS = whole(
  'IFC4',
  `${project(M, '#190')}
${square(10, 'West', [0, 0, 0])}
${square(30, 'East', [10, 0, 0])}
${square(50, 'Roof', [0, 0, 3])}
#70=IFCBUILDINGSTOREY('s',$,'P',$,$,#3,$,$,.ELEMENT.,0.);
#71=IFCBUILDINGSTOREY('t',$,'Above',$,$,#3,$,$,.ELEMENT.,3.);
#72=IFCRELCONTAINEDINSPATIALSTRUCTURE('c',$,$,$,(#17,#37),#70);
#73=IFCRELCONTAINEDINSPATIALSTRUCTURE('d',$,$,$,(#57),#71);
#80=IFCWALL('w',$,'Wall',$,$,#3,$,$,$);
#81=IFCDOOR('x',$,'Door',$,$,#3,$,$,$,$,$,$,$);
#190=IFCDIRECTION((0.5,0.8660254037844386));
#191=IFCPROJECTEDCRS('an invented grid',$,$,$,$,$,$);
#192=IFCMAPCONVERSION(#4,#191,400000.,5800000.,35.,0.,1.,$);
#193=IFCSITE('z',$,'Site',$,$,#3,$,$,.ELEMENT.,$,$,34.5,$,$);`,
);

/**
 * IFC4 in millimetres: 20 × 10 m around the origin, 300 mm high, cut by a plane that falls 1 in 10 along x through z = 250 mm at x = 0:
 * the top is flat at 300 mm up to x = −500 mm, and runs out at z = 0, x = 2500 mm. An opening of 2 × 1 m around the origin goes through.
 */
export const CLIPPED = whole(
  'IFC4',
  `${project(MM)}
#10=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,20000.,10000.);
#12=IFCEXTRUDEDAREASOLID(#10,#2,#8,300.);
#13=IFCDIRECTION((0.1,0.,1.));
#14=IFCCARTESIANPOINT((0.,0.,250.));
#15=IFCAXIS2PLACEMENT3D(#14,#13,$);
#16=IFCPLANE(#15);
#17=IFCHALFSPACESOLID(#16,.F.);
#18=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#12,#17);
${product(19, 'IFCSLAB', { name: 'Cut', place: 3, item: 18, more: '.FLOOR.' })}
#30=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,2000.,1000.);
#32=IFCEXTRUDEDAREASOLID(#30,#2,#8,3000.);
${product(33, 'IFCOPENINGELEMENT', { name: 'Hole', place: 3, item: 32 })}
#42=IFCRELVOIDSELEMENT('r',$,$,$,#21,#35);`,
);

/**
 * IFC2X3 in metres: 10 × 10 m, 0.4 m thick, top at 0, drawn by a curve of pieces: a polyline and a quarter circle of 2 m radius at the upper
 * right, trimmed in degrees. Openings: one over the left edge, x −1 to 1, y 4 to 6, through; one of 0.1 m depth from the top; one of 0.1 m from
 * below.
 */
export const PIECES = whole(
  'IFC2X3',
  `${project(M).replace('((#5))', '((#5,#90))')}
#90=IFCCONVERSIONBASEDUNIT(#91,.PLANEANGLEUNIT.,'DEGREE',#92);
#91=IFCDIMENSIONALEXPONENTS(0,0,0,0,0,0,0);
#92=IFCMEASUREWITHUNIT(IFCPLANEANGLEMEASURE(0.017453292519943295),#93);
#93=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
#10=IFCCARTESIANPOINT((8.,10.));
#11=IFCCARTESIANPOINT((0.,10.));
#12=IFCCARTESIANPOINT((0.,0.));
#13=IFCCARTESIANPOINT((10.,0.));
#14=IFCCARTESIANPOINT((10.,8.));
#15=IFCPOLYLINE((#10,#11,#12,#13,#14));
#16=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#15);
#17=IFCCARTESIANPOINT((8.,8.));
#18=IFCAXIS2PLACEMENT2D(#17,$);
#19=IFCCIRCLE(#18,2.);
#20=IFCTRIMMEDCURVE(#19,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(90.)),.T.,.PARAMETER.);
#21=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#20);
#22=IFCCOMPOSITECURVE((#16,#21),.F.);
#23=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#22);
#24=IFCEXTRUDEDAREASOLID(#23,#2,#9,0.4);
${product(25, 'IFCSLAB', { name: 'Pieces', place: 3, item: 24, more: '.FLOOR.' })}
#30=IFCRECTANGLEPROFILEDEF(.AREA.,$,#31,2.,2.);
#31=IFCAXIS2PLACEMENT2D(#12,$);
${(
  [
    [40, 0, 5, -1, 2],
    [50, 5, 5, -0.1, 0.2],
    [60, 8, 3, -0.5, 0.2],
  ] as const
)
  .map(
    ([id, x, y, z, depth]) => `#${id}=IFCCARTESIANPOINT((${x}.,${y}.,${z.toFixed(1)}));
#${id + 1}=IFCAXIS2PLACEMENT3D(#${id},$,$);
#${id + 2}=IFCEXTRUDEDAREASOLID(#30,#${id + 1},#8,${depth.toFixed(1)});${product(id + 3, 'IFCOPENINGELEMENT', { name: 'O', place: 3, item: id + 2, more: '' })}
#${id + 6}=IFCRELVOIDSELEMENT('v${id}',$,$,$,#27,#${id + 5});`,
  )
  .join('\n')}`,
);

export const ALL_MODELS: readonly string[] = [TURNED_SLAB, SLOPED_FACES, TILTED_PROFILE, IN_FEET, SEVERAL_SLABS, CLIPPED, PIECES];
