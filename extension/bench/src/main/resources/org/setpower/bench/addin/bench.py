import unohelper
from com.sun.star.lang import XServiceInfo
from org.setpower.bench import XPython

NAME = "org.setpower.bench.PythonFunctions"
SERVICES = ("org.setpower.bench.Python",)


class PythonFunctions(unohelper.Base, XPython, XServiceInfo):
    def __init__(self, context):
        pass

    def pythonDrop(self, ohms, length, amps):
        return 2 * ohms * length * amps

    def getImplementationName(self):
        return NAME

    def supportsService(self, name):
        return name in SERVICES

    def getSupportedServiceNames(self):
        return SERVICES


g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(PythonFunctions, NAME, SERVICES)
