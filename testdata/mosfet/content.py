"""Both revisions of the MOSFET sheet: pick(b, c) marks every difference between revision B and revision C."""

from sheet import cell

PART, MAKER = "ODV2070", "Ondrevik Power"
GENERAL_RATINGS = "TA=25 °C unless otherwise noted"
GENERAL = "TJ=25 °C unless otherwise noted"

# (name, symbol, [(condition, min, typ, max)], unit)


def ratings(pick):
    return [
        ("Drain-source voltage", "V_{DS}", [(None, None, None, "20")], "V"),
        ("Gate-source voltage", "V_{GS}", [(None, None, None, "±12")], "V"),
        ("Continuous drain current", "I_{D}", [("T_{A}=25 °C", None, None, "5.5"), ("T_{A}=70 °C", None, None, "4.4")], "A"),
        ("Pulsed drain current", "I_{DM}", [(None, None, None, pick("40", "32"))], "A"),
        ("Power dissipation", "P_{D}", [("T_{A}=25 °C", None, None, "1.3"), ("T_{A}=70 °C", None, None, "0.8")], "W"),
        ("Junction and storage temperature", "T_{J}, T_{STG}", [(None, "-55", None, "150")], "°C"),
    ]


def thermal(pick):
    return [("Thermal resistance, junction to ambient", "R_{θJA}", [("t ≤ 10 s", None, "75", "95"), ("Steady state", None, "105", "130")], "°C/W")]


def characteristics(pick):
    capacitance = "V_{GS}=0 V, V_{DS}=10 V, f=1 MHz"
    charge = "V_{GS}=4.5 V, V_{DS}=10 V, I_{D}=5 A"
    switching = "V_{GS}=4.5 V, V_{DS}=10 V, R_{L}=2 Ω, R_{GEN}=3 Ω"
    return [
        ("Static parameters", [
            ("Drain-source breakdown voltage", "V_{(BR)DSS}", [("V_{GS}=0 V, I_{D}=250 µA", "20", None, None)], "V"),
            ("Zero gate voltage drain current", "I_{DSS}", [("V_{DS}=16 V, V_{GS}=0 V", None, None, "1"), ("V_{DS}=16 V, V_{GS}=0 V, T_{J}=85 °C", None, None, "10")], "µA"),
            ("Gate leakage current", "I_{GSS}", [("V_{DS}=0 V, V_{GS}=±12 V", None, None, "±100")], "nA"),
            ("Gate threshold voltage", "V_{GS(th)}", [("V_{DS}=V_{GS}, I_{D}=250 µA", "0.45", "0.70", pick("1.00", "1.20"))], "V"),
            ("Drain-source on-resistance", "R_{DS(on)}", [("V_{GS}=4.5 V, I_{D}=5 A", None, "21", pick("27", "32")), ("V_{GS}=2.5 V, I_{D}=4 A", None, "27", "36"),
                                                        ("V_{GS}=1.8 V, I_{D}=2 A", None, "36", "52")], "mΩ"),
            ("Forward transconductance", "g_{FS}", [("V_{DS}=5 V, I_{D}=5 A", None, "18", None)], "S"),
        ]),
        ("Dynamic parameters", [
            ("Input capacitance", "C_{iss}", [(capacitance, None, "560", None)], "pF"),
            ("Output capacitance", "C_{oss}", [(capacitance, None, "90", None)], "pF"),
            ("Reverse transfer capacitance", "C_{rss}", [(capacitance, None, "70", None)], "pF"),
            ("Gate resistance", "R_{g}", [("f=1 MHz", None, "1.5", "3.0")], "Ω"),
            ("Total gate charge", "Q_{g}", [(charge, None, "8.2", pick("11", "13"))], "nC"),
            ("Gate-source charge", "Q_{gs}", [(charge, None, "1.1", None)], "nC"),
            ("Gate-drain charge", "Q_{gd}", [(charge, None, "2.2", None)], "nC"),
        ]),
        ("Switching times", [
            ("Turn-on delay time", "t_{d(on)}", [(switching, None, "6", None)], "ns"),
            ("Rise time", "t_{r}", [(switching, None, "9", None)], "ns"),
            ("Turn-off delay time", "t_{d(off)}", [(switching, None, "28", None)], "ns"),
            ("Fall time", "t_{f}", [(switching, None, "8", None)], "ns"),
        ]),
        ("Body diode", [
            ("Diode forward voltage", "V_{SD}", [("I_{S}=1 A, V_{GS}=0 V", None, "0.72", "1.0")], "V"),
            ("Continuous diode current", "I_{S}", [(None, None, None, "1.3")], "A"),
        ]),
    ]


PINS = [("1", "G", "Gate"), ("2", "S", "Source"), ("3", "D", "Drain")]
PACKAGE = [("A", "0.95", "1.05", "1.15"), ("D", "2.80", "2.92", "3.04"), ("E", "2.25", "2.40", "2.55"), ("E1", "1.20", "1.30", "1.40"), ("e", "0.90", "0.95", "1.00")]


def history(pick):
    rows = [["A", "2018-02-19", "First issue"], ["B", "2019-07-08", "Thermal resistance added"]]
    return rows + pick([], [["C", "2022-03-30", "Pulsed drain current 32 A (was 40 A). On-resistance at V_{GS}=4.5 V, maximum 32 mΩ (was 27 mΩ). "
                                                "Total gate charge, maximum 13 nC (was 11 nC). Spelling."]])


def rows_of(entries):
    """Table rows with the name, symbol and unit merged over the lines of one parameter."""
    out = []
    for name, symbol, lines, unit in entries:
        for index, (condition, low, middle, high) in enumerate(lines):
            values = [condition or "", low or "", middle or "", high or ""]
            span = len(lines)
            out.append([cell(name, rs=span), cell(symbol, rs=span), *values, cell(unit, rs=span)] if index == 0 else values)
    return out
