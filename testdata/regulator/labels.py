#!/usr/bin/python3
"""Write labels/reference.json and labels/candidate.json: the rows as printed in each sheet. Called by build.sh after printing."""

import importlib.util
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
TOOLS = os.path.join(HERE, "..", "tools")
sys.path.insert(0, TOOLS)
spec = importlib.util.spec_from_file_location("label_tools", os.path.join(TOOLS, "labels.py"))
label_tools = importlib.util.module_from_spec(spec)
spec.loader.exec_module(label_tools)

# name, symbol, condition, then (min, typ, max, unit) of the reference and of the candidate; one tuple where both print the same
CHARACTERISTICS = [
    ("Output voltage", "VOUT", "IOUT=1 mA", ("3234", "3300", "3366", "mV"), ("3.234", "3.300", "3.366", "V")),
    ("Line regulation", "ΔVLINE", "VIN=3.8 V to 5.5 V, IOUT=1 mA", (None, "4", "12", "mV"), (None, "0.004", "0.012", "V")),
    ("Load regulation", "ΔVLOAD", "IOUT=1 mA to 250 mA", (None, "10", "30", "mV"), (None, "0.010", "0.030", "V")),
    ("Dropout voltage", "VDO", "IOUT=250 mA", (None, "190", "280", "mV"), (None, "0.210", "0.340", "V")),
    ("Quiescent current", "IQ", "IOUT=0 mA", (None, "2.5", "4.0", "µA"), (None, "0.0025", "0.0060", "mA")),
    ("Shutdown current", "ISD", "VEN=0 V", (None, None, "0.10", "µA"), (None, None, "0.00010", "mA")),
    ("Current limit", "ILIM", "VOUT=3.0 V", ("300", "420", "600", "mA"), ("0.300", "0.420", "0.600", "A")),
    ("Short-circuit current", "ISC", "VOUT=0 V", (None, "90", None, "mA"), (None, "0.090", None, "A")),
    ("Enable input voltage, high", "VENH", None, ("1200", None, None, "mV"), ("1.2", None, None, "V")),
    ("Enable input voltage, low", "VENL", None, (None, None, "400", "mV"), (None, None, "0.4", "V")),
    ("Power supply rejection ratio", "PSRR", "f=1 kHz, IOUT=10 mA", (None, "58", None, "dB")),
    ("Soft-start time", "tSS", "IOUT=10 mA", (None, "120", None, "µs"), (None, "0.120", None, "ms")),
    ("Thermal shutdown temperature", "TSD", None, (None, "155", None, "°C")),
]
RATINGS = [
    ("Input voltage", "VIN", None, ("-0.3", None, "7.0", "V")),
    ("Enable input voltage", "VEN", None, ("-0.3", None, "7.0", "V")),
    ("Output voltage", "VOUT", None, ("-0.3", None, "VIN+0.3", "V")),
    ("Power dissipation", "PD", None, (None, None, "400", "mW"), (None, None, "0.4", "W")),
    ("Junction temperature", "TJ", None, (None, None, "150", "°C")),
    ("Storage temperature", "TSTG", None, ("-55", None, "150", "°C")),
    ("Electrostatic discharge, human body model", "VESD", None, (None, None, "2000", "V"), (None, None, "2", "kV")),
]
OPERATING = [
    ("Input voltage", "VIN", None, ("3.6", None, "5.5", "V")),
    ("Output current", "IOUT", None, ("0", None, "250", "mA"), ("0", None, "0.250", "A")),
    ("Output capacitance", "COUT", None, ("1.0", None, "47", "µF"), ("2.2", None, "47", "µF")),
    ("Series resistance of the output capacitor", "ESR", None, ("5", None, "500", "mΩ"), ("0.005", None, "0.500", "Ω")),
    ("Operating junction temperature", "TJ", None, ("-40", None, "125", "°C")),
]
THERMAL = [("Thermal resistance, junction to ambient", "RθJA", None, (None, "220", None, "°C/W"))]
PINS = [("1", "IN", "Supply input"), ("2", "GND", "Ground"), ("3", "EN", "Enable input, active high"), ("4", "NC", "Not used inside the IC"),
        ("5", "OUT", "Regulated output")]

PAGES = {"reference": {"rating": 1, "operating-condition": 1, "thermal": 1, "characteristic": 2},
         "candidate": {"rating": 2, "operating-condition": 2, "thermal": 2, "characteristic": 2}}


def main():
    os.makedirs(os.path.join(HERE, "labels"), exist_ok=True)
    for side in ("reference", "candidate"):
        general = "VIN=4.3 V, CIN=COUT=2.2 µF, TA=25 °C unless otherwise noted"
        rows = []
        for kind, lines in (("rating", RATINGS), ("operating-condition", OPERATING), ("thermal", THERMAL), ("characteristic", CHARACTERISTICS)):
            for name, symbol, condition, *values in lines:
                low, middle, high, unit = values[-1 if side == "candidate" else 0]
                whole = general if kind == "characteristic" else None
                if side == "candidate":
                    condition, whole = (text.replace("=", " = ") if text else None for text in (condition, whole))
                entry = label_tools.row(kind, name, symbol, condition, whole, low, middle, high, unit)
                rows.append({"page": PAGES[side][kind], **entry})
        label_tools.check(rows, os.path.join(HERE, f"{side}.pdf"))
        pins = [{"number": number, "name": name, "function": function} for number, name, function in PINS]
        label_tools.write(os.path.join(HERE, "labels", f"{side}.json"), f"{side}.pdf", [1, 2], rows, pins,
                          "The package dimensions are no specification table (no rows). The package is the SOT-23-5.")


if __name__ == "__main__":
    main()
