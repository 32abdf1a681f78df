' What a screen reader is told of the windows that are open. In Basic, as the interfaces for
' accessibility differ between offices and only an office's own programs know its own.

' A window that is being made is not shown yet: it may still be named after its kind.
Function Windows() As String
  Dim toolkit, window, i, lines
  toolkit = CreateUnoService("com.sun.star.awt.Toolkit")
  For i = 0 To toolkit.getTopWindowCount() - 1
    window = toolkit.getTopWindow(i)
    If IsShown(window) Then
      lines = lines & i & Chr(9) & window.AccessibleContext.AccessibleRole & Chr(9) & _
          window.AccessibleContext.AccessibleName & Chr(10)
    End If
  Next
  Windows = lines
End Function

Function IsShown(window) As Boolean
  If HasUnoInterfaces(window, "com.sun.star.accessibility.XAccessible", "com.sun.star.awt.XWindow2") Then
    IsShown = window.isVisible()
  End If
End Function

Function Parts(number) As String
  Dim window
  window = CreateUnoService("com.sun.star.awt.Toolkit").getTopWindow(number)
  Parts = Walked(window.AccessibleContext)
End Function

Function Walked(context) As String
  Dim i, part, at, lines
  For i = 0 To context.AccessibleChildCount - 1
    part = context.getAccessibleChild(i).AccessibleContext
    If Has(part, 25) Then
      at = part.LocationOnScreen
      lines = lines & part.AccessibleRole & Chr(9) & Has(part, 10) & Chr(9) & Has(part, 11) & _
          Chr(9) & at.X & Chr(9) & at.Y & Chr(9) & Join(Split(part.AccessibleName, Chr(10)), " ") & Chr(10)
      lines = lines & Walked(part)
    End If
  Next
  Walked = lines
End Function

' Whether a state is on: of a set in older offices, a bit of a number in newer ones.
Function Has(context, state) As Boolean
  Dim states, unit
  states = context.AccessibleStateSet
  If IsObject(states) Then
    Has = states.contains(state)
  Else
    unit = 2 ^ (state - 1)
    Has = Int(states / unit) <> 2 * Int(states / (2 * unit))
  End If
End Function
