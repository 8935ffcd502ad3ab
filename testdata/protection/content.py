"""The two single-cell protection sheets: one text, with the planted differences and the editorial noise at the calls of pick()."""

from sheet import Table, cell

import figures

REFERENCE = {"maker": "Harvane Microelectronics", "part": "HRN1607", "code": "HRN1607-BA6T", "document": "HM-0412-E", "revision": "Rev. 1.3",
             "date": "2021-06-14", "phone": "Phone 0555 0142"}
CANDIDATE = {"maker": "Tiquell Devices", "part": "TQL1607", "code": "TQL1607-BA6T", "document": "TQD 2291", "revision": "Rev. 2.0",
             "date": "2024-02-05", "phone": "Phone 0555 0177"}

MINUS = "\u2212"


def characteristics(pick):
    """(group, name, symbol, [(condition, min, typ, max)], unit) of the electrical characteristics, in the order printed."""
    over = pick("Overcharge", "Over-charge")
    under = pick("Overdischarge", "Over-discharge")
    ambient = pick("Ta", "TA")
    return [
        ("Detection voltage", f"{over} detection voltage", "V_{CU}",
         [(None, "4.255", "4.280", "4.305"), (pick(f"{ambient}=-20 °C to 60 °C", f"{ambient} = {MINUS}20 °C to 60 °C"), "4.245", "4.280", "4.315")], "V"),
        ("Detection voltage", f"{over} release voltage", "V_{CL}", [(None, "4.030", "4.080", "4.130")], "V"),
        ("Detection voltage", f"{under} detection voltage", "V_{DL}", [(None, "2.730", "2.800", "2.870")], "V"),
        ("Detection voltage", f"{under} release voltage", "V_{DU}", [(None, "2.920", "3.000", "3.080")], "V"),
        ("Detection voltage", "Discharge overcurrent detection voltage", "V_{DIOV}", [(pick("V_{DD}=3.5 V", "V_{DD} = 3.5 V"), "0.135", "0.150", "0.165")], "V"),
        ("Detection voltage", "Load short-circuit detection voltage", "V_{SHORT}", [(pick("V_{DD}=3.5 V", "V_{DD} = 3.5 V"), "0.400", "0.500", "0.600")], "V"),
        ("Detection voltage", "Charge overcurrent detection voltage", "V_{CIOV}",
         [(pick("V_{DD}=3.5 V", "V_{DD} = 3.5 V"), pick("-0.120", MINUS + "0.120"), pick("-0.100", MINUS + "0.100"), pick("-0.080", MINUS + "0.080"))], "V"),
        ("Detection voltage", "Discharge overcurrent release voltage", "V_{RIOV}",
         [(pick("V_{DD}=3.5 V", "V_{DD} = 3.5 V"), *(f"V_{{DD}}{pick('-', MINUS)}{v}" for v in ("1.2", "0.8", "0.5")))], "V"),
        ("Delay time", f"{over} detection delay time", "t_{CU}", [(None, "0.8", "1.0", "1.2")], "s"),
        ("Delay time", f"{under} detection delay time", "t_{DL}", [(None, "96", "128", "160")], "ms"),
        ("Delay time", "Discharge overcurrent detection delay time", "t_{DIOV}", [(pick("V_{DD}=3.5 V", "V_{DD} = 3.5 V"), "9.0", "12.0", "15.0")], "ms"),
        ("Delay time", "Load short-circuit detection delay time", "t_{SHORT}",
         [(pick("V_{DD}=3.5 V", "V_{DD} = 3.5 V"), *pick(("180", "280", "380"), ("260", "400", "560")))], pick("\u00b5s", "\u03bcs")),
        ("Delay time", "Charge overcurrent detection delay time", "t_{CIOV}", [(pick("V_{DD}=3.5 V", "V_{DD} = 3.5 V"), "6.0", "8.0", "10.0")], "ms"),
        ("Current consumption", "Current consumption during operation", "I_{OPE}",
         [(pick("V_{DD}=3.5 V, V_{VM}=0 V", "V_{DD} = 3.9 V, V_{VM} = 0 V"), "1.0", "2.2", "4.0")], pick("\u00b5A", "\u03bcA")),
        ("Current consumption", pick("Current consumption during power-down", "Current consumption during power down"), "I_{PDN}",
         [(pick("V_{DD}=V_{VM}=1.5 V", "V_{DD} = V_{VM} = 1.5 V"), None, None, "0.10")], pick("\u00b5A", "\u03bcA")),
        ("Internal resistance", "Resistance between VM pin and VDD pin", "R_{VMD}", [(pick("V_{DD}=1.8 V, V_{VM}=0 V", "V_{DD} = 1.8 V, V_{VM} = 0 V"), "100", "300", "900")], "kΩ"),
        ("Internal resistance", "Resistance between VM pin and VSS pin", "R_{VMS}", [(pick("V_{DD}=3.5 V, V_{VM}=1.0 V", "V_{DD} = 3.5 V, V_{VM} = 1.0 V"), "15", "30", "60")], "kΩ"),
        ("Output resistance", "CO pin resistance \u201cH\u201d", "R_{COH}", [(pick("V_{CO}=3.0 V, V_{DD}=3.5 V, V_{VM}=0 V", "V_{CO} = 3.0 V, V_{DD} = 3.5 V, V_{VM} = 0 V"), "2.0", "4.5", "9.0")], "kΩ"),
        ("Output resistance", "CO pin resistance \u201cL\u201d", "R_{COL}", [(pick("V_{CO}=0.5 V, V_{DD}=4.5 V, V_{VM}=0 V", "V_{CO} = 0.5 V, V_{DD} = 4.5 V, V_{VM} = 0 V"), "1.8", "4.0", "8.0")], "kΩ"),
        ("Output resistance", "DO pin resistance \u201cH\u201d", "R_{DOH}", [(pick("V_{DO}=3.0 V, V_{DD}=3.5 V, V_{VM}=0 V", "V_{DO} = 3.0 V, V_{DD} = 3.5 V, V_{VM} = 0 V"), "2.2", "5.0", "10.0")], "kΩ"),
        ("Output resistance", "DO pin resistance \u201cL\u201d", "R_{DOL}", [(pick("V_{DO}=0.5 V, V_{DD}=1.8 V, V_{VM}=0 V", "V_{DO} = 0.5 V, V_{DD} = 1.8 V, V_{VM} = 0 V"), "1.5", "3.5", "7.0")], "kΩ"),
    ]


def ratings(pick):
    """(name, symbol, pin, low, high, unit)."""
    minus = pick("-", MINUS)
    return [
        ("Input voltage between VDD pin and VSS pin", "V_{DS}", "VDD", f"V_{{SS}}{minus}0.3", "V_{SS}+7", "V"),
        ("VM pin input voltage", "V_{VM}", "VM", f"V_{{DD}}{minus}{pick('28', '12')}", "V_{DD}+0.3", "V"),
        ("CO pin output voltage", "V_{CO}", "CO", f"V_{{VM}}{minus}0.3", "V_{DD}+0.3", "V"),
        ("DO pin output voltage", "V_{DO}", "DO", f"V_{{SS}}{minus}0.3", "V_{DD}+0.3", "V"),
        ("TP pin input voltage", "V_{TP}", "TP", f"V_{{SS}}{minus}0.3", "V_{DD}+0.3", "V"),
        ("Power dissipation", "P_{D}", pick("-", "\u2013"), None, "450", "mW"),
        ("Operating ambient temperature", "T_{opr}", pick("-", "\u2013"), f"{minus}40", "+85", "°C"),
        ("Storage temperature", "T_{stg}", pick("-", "\u2013"), f"{minus}55", "+125", "°C"),
    ]


def operating(pick):
    return [
        ("Operating voltage between VDD pin and VSS pin", "V_{DSOP}", "Internal circuit operating", "1.5", None, "6.0", "V"),
    ]


PINS = [
    ("1", "CO", "Gate drive output for the charge-control FET"),
    ("2", "VM", "Monitor input at the negative terminal of the charger"),
    ("3", "DO", "Gate drive output for the discharge-control FET"),
    ("4", "VSS", "Negative supply input, negative terminal of the cell"),
    ("5", "VDD", "Positive supply input, positive terminal of the cell"),
    ("6", "TP", "Test input of the maker"),
]

PACKAGE = [
    ("A", "1.05", "1.15", "1.25"), ("D", "2.82", "2.92", "3.02"), ("E", "2.65", "2.80", "2.95"), ("E1", "1.50", "1.60", "1.70"),
    ("b", "0.30", "0.40", "0.50"), ("e", "0.90", "0.95", "1.00"), ("L", "0.30", "0.45", "0.60"),
]


def blocks(side):
    """side is "reference" or "candidate"; the printed sheets differ in nothing but what pick() chooses and the page breaks."""
    first = side == "reference"
    who = REFERENCE if first else CANDIDATE
    pick = lambda reference, candidate: reference if first else candidate
    part, font = who["part"], pick("Liberation Serif", "Noto Sans")
    over, under = pick("overcharge", "over-charge"), pick("overdischarge", "over-discharge")
    Over, Under = over.capitalize(), under.capitalize()
    power_down = pick("power-down", "power down")
    figure = pick("Figure", "Fig.")
    number = iter(range(1, 9))
    space = pick(" ", "")
    out = [
        ("title", part),
        ("subtitle", pick("Protection IC for one lithium-ion cell", "Protection IC for one Lithium-Ion Cell")),
        ("h1", pick("1. Description", "1 Description")),
        ("p", f"The {part} watches one lithium-ion or lithium-polymer cell through its voltage and through the voltage drop across two external N-channel FETs in the negative line. "
              f"It stops charging and discharging when a limit is passed. All delay times are made inside the IC, so that no external capacitor is needed for them. "
              f"It was drawn up for small equipment that is left alone for long times, such as field weather loggers."),
        ("h1", pick("2. Features", "2 Features")),
        ("ul", [
            f"{Over} detection voltage: 4.280{space}V, accuracy ±25{space}mV at 25{space}°C",
            f"{Under} detection voltage: 2.800{space}V, accuracy ±70{space}mV",
            f"Discharge overcurrent detection voltage: 0.150{space}V, accuracy ±15{space}mV",
            "Load short-circuit detection and charge overcurrent detection",
            f"0{space}V battery charge: {pick('inhibited', 'allowed')}",
            f"{power_down.capitalize()} function: available",
            f"Current consumption during {power_down}: 0.10{space}{pick(chr(0xb5), chr(0x3bc))}A max.",
            "Package: SOT-23-6",
        ]),
        ("h1", pick("3. Applications", "3 Applications")),
        ("ul", ["Field weather loggers and other battery-powered measuring instruments", "Battery packs with one lithium-ion cell"]),
        ("h1", pick("4. Ordering information", "4 Ordering Information")),
        ("table", Table(pick("Table 1. Selection table", "Table 1: Selection table"), [26, 20, 20, 20, 20, 22, 18, 20], "lccccccc",
            [["Order code", f"{Over} detection voltage", f"{Over} release voltage", f"{Under} detection voltage", f"{Under} release voltage",
              "Discharge overcurrent detection voltage", "0 V battery charge", f"{power_down.capitalize()} function"]],
            [[who["code"], "4.280 V", "4.080 V", "2.800 V", "3.000 V", "0.150 V", pick("Inhibited", "Allowed"), "Available"]])),
        ("p", "The IC is delivered on tape in reels of 3000 pieces. Other voltages are made on request."),
        ("p", pick("The marking on the package is grey in colour.", "The marking on the package is gray in color.")),
        ("h1", pick("5. Pin configuration", "5 Pin Configuration")),
        ("figure", figures.six_pin(font, [name for _, name, _ in PINS]), 60, 36,
            f"Figure {next(number)}. Pin arrangement (top view)" if first else "Pin arrangement (top view)"),
        ("table", Table(pick("Table 2. Pin description", "Table 2: Pin description"), [18, 22, 100], "ccl", [["Pin No.", "Symbol", "Description"]],
            [list(row) for row in PINS], width_mm=140)),
        ("h1", pick("6. Block diagram", "6 Block Diagram")),
        ("figure", figures.protector_blocks(font, {"left": [f"{Over} detector", f"{Under} detector", "Overcurrent detector", "Short detector"],
                                                   "logic": ["Delay and", "logic"], "right": ["CO driver", "DO driver", "VM switch", "Test input"]}), 150, 72,
            f"{figure} {next(number)}. Block diagram"),
        ("h1", pick("7. Absolute maximum ratings", "7 Absolute Maximum Ratings")),
    ]
    low_high = lambda low, high: high if low is None else f"{low} {pick('to', '~')} {high}"
    out += [
        ("table", Table(pick("Table 3. Absolute maximum ratings (Ta=25 °C unless otherwise specified)", "Table 3: Absolute maximum ratings (TA = 25 °C unless otherwise specified)"),
            [66, 18, 18, 50, 18], "lcccc", [["Item", "Symbol", "Applied pin", "Rating", "Unit"]],
            [[name, symbol, pin, low_high(low, high), unit] for name, symbol, pin, low, high, unit in ratings(pick)])),
        ("p", pick("Beyond these ratings the IC can be damaged for good. Its behaviour at these values is not guaranteed.",
                   "Beyond these ratings the IC can be damaged for good. Its behavior at these values is not guaranteed.")),
        ("h1", pick("8. Recommended operating conditions", "8 Recommended Operating Conditions")),
        ("table", Table(pick("Table 4. Recommended operating conditions", "Table 4: Recommended operating conditions"), [66, 20, 40, 14, 14, 14, 12], "lclcccc",
            [["Item", "Symbol", "Condition", "Min.", "Typ.", "Max.", "Unit"]],
            [[name, symbol, condition, low, middle or pick("-", "\u2013"), high, unit] for name, symbol, condition, low, middle, high, unit in operating(pick)])),
        ("h1", pick("9. Electrical characteristics", "9 Electrical Characteristics")),
    ]
    rows, group = [], None
    for heading, name, symbol, lines, unit in characteristics(pick):
        if heading != group:
            rows.append([cell(heading, cs=7, b=True, shade=True)])
            group = heading
        for index, (condition, low, middle, high) in enumerate(lines):
            blank = pick("-", "\u2013")
            values = [condition or blank, low or blank, middle or blank, high or blank]
            if index == 0:
                rows.append([cell(name, rs=len(lines)), cell(symbol, rs=len(lines)), *values, cell(unit, rs=len(lines))])
            else:
                rows.append(values)
    out += [
        ("table", Table(pick("Table 5. Electrical characteristics (Ta=25 °C unless otherwise specified)", "Table 5: Electrical characteristics (TA = 25 °C unless otherwise specified)"),
            [54, 16, 50, 17, 17, 17, 11], "lclcccc", [["Item", "Symbol", "Condition", "Min.", "Typ.", "Max.", "Unit"]], rows)),
        ("small", "The limits over the temperature range are guaranteed by design and are not tested in production."),
        ("h1", pick("10. Functional description", "10 Functional Description")),
        ("h2", "Normal state"),
        ("p", f"While the cell voltage lies between V_{{DL}} and V_{{CU}} and the voltage of the VM pin lies between V_{{CIOV}} and V_{{DIOV}}, both FETs are on. "
              f"Charging and discharging are possible."),
        ("h2", f"{Over} state"),
        ("p", f"When the cell voltage rises above V_{{CU}} and stays there for t_{{CU}} or longer, the CO pin goes low and the charge-control FET is turned off. "
              f"This state is released when the cell voltage falls below V_{{CL}}. "
              f"{pick('The load short-circuit detection is not disabled in the overcharge state.', 'The load short-circuit detection is disabled in the over-charge state.')}"),
        ("h2", f"{Under} state"),
        ("p", f"When the cell voltage falls below V_{{DL}} and stays there for t_{{DL}} or longer, the DO pin goes low and the discharge-control FET is turned off. "
              f"The VM pin is then pulled up to V_{{DD}} by R_{{VMD}}, and the IC enters the {power_down} state with the current consumption I_{{PDN}}. "
              f"The {under} state is released when a charger is connected {pick('or', 'and')} the cell voltage rises to V_{{DU}} or higher."),
        ("h2", "Discharge overcurrent state"),
        ("p", f"When the voltage of the VM pin rises above V_{{DIOV}} and stays there for t_{{DIOV}} or longer, the DO pin goes low and the discharge-control FET is turned off. "
              f"The VM pin is then pulled down to V_{{SS}} by R_{{VMS}}. This state is released automatically when the load is removed and the voltage of the VM pin falls below V_{{RIOV}}."),
        ("h2", "Load short-circuit state"),
        ("p", f"When the voltage of the VM pin rises above V_{{SHORT}} and stays there for t_{{SHORT}} or longer, the discharge-control FET is turned off. "
              f"The release is the same as that of the discharge overcurrent state."),
        ("h2", "Charge overcurrent state"),
        ("p", f"When the voltage of the VM pin falls below V_{{CIOV}} and stays there for t_{{CIOV}} or longer, the CO pin goes low and the charge-control FET is turned off. "
              f"This state is released when the charger is removed."),
        ("h2", "0 V battery charge"),
        ("p", f"Charging of a battery whose voltage has fallen to 0{space}V is {pick('inhibited', 'allowed')}. "
              f"The specification of the cell has to be consulted for the lowest voltage at which charging may begin."),
        ("h1", pick("11. Application circuit", "11 Application Circuit")),
        ("p", pick(f"Figure 3 shows the connection of the {part} in a field weather logger.", f"Fig. 2 shows the connection of the {part} in a field weather logger.")),
        ("figure", figures.protector_circuit(font, part, {"cell": "Cell", "open": "open"}), 150, 76, f"{figure} {next(number)}. Application circuit"),
        ("table", Table(pick("Table 6. External parts", "Table 6: External parts"), [18, 66, 20, 20, 20, 16], "clcccc", [["Symbol", "Purpose", "Min.", "Typ.", "Max.", "Unit"]],
            [["R1", "Supply filter and protection against static discharge", "220", "330", "470", "Ω"],
             ["C1", "Supply filter", "0.068", "0.1", "0.22", pick("\u00b5F", "\u03bcF")],
             ["R2", "Current limit for a charger connected in reverse", "1.0", "2.2", "3.3", "kΩ"]], width_mm=160)),
        ("p", pick("Connect C1 close to the VDD pin and the VSS pin.", "Please connect C1 close to the VDD pin and the VSS pin.")),
        ("h1", pick("12. Precautions", "12 Precautions")),
        ("ul", [
            "The TP pin must be left open on the circuit board.",
            "Handle the IC on a grounded bench, since a static discharge can damage its inputs.",
            "The trip current depends on the on-resistance of the FETs, which changes with their temperature and with the cell voltage.",
            "The circuit shown here is an example and has to be tested with the cell, the FETs and the charger that are used.",
        ]),
        ("h1", pick("13. Package dimensions", "13 Package Dimensions")),
        ("figure", figures.outline(font), 120, 44, f"{figure} {next(number)}. Outline of SOT-23-6"),
        ("table", Table(pick("Table 7. Dimensions of SOT-23-6", "Table 7: Dimensions of SOT-23-6"), [20, 24, 24, 24, 18], "ccccc", [["Symbol", "Min.", "Nom.", "Max.", "Unit"]],
            [[name, low, middle, high] + ([cell("mm", rs=len(PACKAGE))] if index == 0 else []) for index, (name, low, middle, high) in enumerate(PACKAGE)], width_mm=110)),
        ("h1", pick("14. Revision history", "14 Revision History")),
        ("table", Table(pick("Table 8. Revision history", "Table 8: Revision history"), [24, 28, 88], "ccl", [["Revision", "Date", "Change"]],
            pick([["1.0", "2020-03-02", "First edition"], ["1.3", "2021-06-14", "Spelling put right"]],
                 [["1.0", "2023-11-20", "First edition"], ["2.0", "2024-02-05", "Spelling put right"]]), width_mm=140)),
        ("small", f"{who['maker']}, {who['phone']}. A later issue of this sheet takes the place of this one."),
    ]
    return out
